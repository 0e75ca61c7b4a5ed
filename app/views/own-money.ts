import { type ClassDocument, classAnswer, classYear, headsRange, hireOf, onlyNeeded } from "#core/class";
import type { HallDocument } from "#core/hall";
import { coinText, payerKey } from "#core/price";
import { type CurrencyCode, exactNumber, readAmount, type ExactMinor } from "#core/words";
import { Fraction } from "fraction.js";
import { hireKnown } from "./hire-known.ts";
import { type Missing, missing, type Unsound, unsound } from "./sheet-part.ts";

/** What a class of the practice brings to the money of a year, from its class sheet; amounts are decimal strings. */
export type OwnMoney = {
  readonly kind: "ready";
  readonly dates: readonly string[];
  /** a session's takings; low and high where the number of people is a guess */
  readonly takings: { readonly low: string; readonly middle: string; readonly high: string };
  /** the hall of a session, on average over its year */
  readonly hall: string;
  readonly travel: string;
  /** music, cover, what each person costs, and other things */
  readonly other: string;
  /** the part that passes and blocks pay, and for how many sessions at a time; null where nobody has one */
  readonly passes: { readonly share: number; readonly sessions: number } | null;
};

/** A class as takings and costs on its real dates. */
export function ownMoney(
  document: ClassDocument,
  hall: HallDocument | null,
  currency: CurrencyCode,
): OwnMoney | Missing | Unsound {
  const known = hireKnown({ hall });
  if (known.kind === "missing") return known;
  const { from } = document.year;
  const hire = hireOf(known.hall, currency);
  if (!hire.ok) return unsound(hire.problems);
  const year = classYear(onlyNeeded(document, "year", currency, from), hire.value, currency);
  if (!year.ok) return unsound(year.problems);
  const { dates, months } = year.value;
  if (dates.length === 0)
    return missing("It has no session in its year.", "Look at its dates and closures on its class sheet.");
  const evening = classAnswer(document, known.hall, currency, from, "break-even");
  if (!evening.ok) return unsound(evening.problems);
  const costs = costsOf(document, currency);
  const hired = months.reduce((sum, month) => sum + month.hire, 0);
  const text = (exact: ExactMinor) => coinText(exact, currency);
  const takings = (heads: number) => text(exactNumber(heads).mul(evening.value.yield));
  const [low, high] = headsRange(document, null) ?? [document.heads, document.heads];
  return {
    kind: "ready",
    dates,
    takings: { low: takings(low), middle: takings(document.heads), high: takings(high) },
    hall: text(exactNumber(hired).div(dates.length)),
    travel: text(costs.travel),
    other: text(costs.other),
    passes: passesOf(document, evening.value.yield, currency),
  };
}

function costsOf({ costs, heads }: ClassDocument, currency: CurrencyCode) {
  const amount = (text: string) => {
    const read = readAmount(text, currency, "costs");
    return exactNumber(read.ok ? read.value : 0);
  };
  const { travel, music, cover, other, perHead } = costs;
  const besides = [music, cover, other].reduce((sum, text) => sum.add(amount(text)), new Fraction(0));
  return { travel: amount(travel), other: besides.add(amount(perHead).mul(exactNumber(heads))) };
}

/** Share of the takings by passes and blocks, each by its price a class; sold for as many sessions as the commonest. */
function passesOf({ prices, mix }: ClassDocument, perHead: ExactMinor, currency: CurrencyCode) {
  const sold = Object.entries(mix).flatMap(([key, share]) => {
    const size = sizeOf(key);
    const price =
      prices.passes.find(({ classes }) => key === `pass-${classes}`)?.price ??
      prices.courses?.find(({ sessions }) => key === `course-${sessions}`)?.price;
    if (size === null || price === undefined || !(share > 0)) return [];
    const read = readAmount(price, currency, "prices");
    return read.ok ? [{ size, share, brings: exactNumber(share).mul(read.value).div(size) }] : [];
  });
  const [first] = [...sold].sort((one, other) => other.share - one.share);
  if (first === undefined || perHead.lte(0)) return null;
  const share = sold.reduce((sum, { brings }) => sum.add(brings), new Fraction(0)).div(perHead);
  return { share: Math.min(1, share.round(3).valueOf()), sessions: Math.min(100, first.size) };
}

function sizeOf(key: string): number | null {
  const payer = payerKey(key);
  if (payer?.kind === "pass") return payer.classes;
  return payer?.kind === "course" ? payer.sessions : null;
}
