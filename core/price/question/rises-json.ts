import { type ExactMinor, exactText, type WorkingLine } from "#core/words";
import { Fraction } from "fraction.js";
import { chanceText, plainDecimal } from "../chance-text.ts";
import type { Rise } from "../price-rise.ts";
import { type AmountWriter, coinText } from "../reply.ts";
import type { LevelJson, RiseJson } from "./price-json.ts";
import type { PriceQuestion } from "./price-question.ts";
import { people } from "./priced-in-words.ts";
import type { PriceSums } from "./price-sums.ts";

type Asked = Pick<PriceQuestion, "currency" | "demand" | "perHead">;

/** What each rise that she thinks of can lose and leave the evening as it was. */
export function risesJson(
  { rises }: PriceSums,
  question: PriceQuestion,
  write: AmountWriter,
): readonly RiseJson[] {
  const { currency } = question;
  return rises.map(({ rise, single, all }) => ({
    rise: coinText(new Fraction(rise), currency),
    single: single === null ? null : levelJson(single, question, singleSentence, write),
    all: all === null ? null : levelJson(all, question, allSentence, write),
  }));
}

function levelJson(rise: Rise, question: Asked, say: Say, write: AmountWriter): LevelJson {
  const { currency } = question;
  const heads = headsOf(rise, question);
  const written = (exact: ExactMinor): string => write(exact, currency);
  return {
    from: coinText(rise.from, currency),
    until: coinText(rise.until, currency),
    levelLoss: rise.loss === null ? null : rise.loss.valueOf(),
    heads,
    says: say({ from: written(rise.from), until: written(rise.until), lost: lostWords(rise, heads) }),
  };
}

type Said = { readonly from: string; readonly until: string; readonly lost: Lost | null };
type Lost = { readonly share: string; readonly people: string };
type Say = (said: Said) => string;

function singleSentence({ from, until, lost }: Said): string {
  if (lost === null) return `With the single at ${until} a head still costs more than it brings.`;
  return `With the single at ${until} instead of ${from} an evening stays level while no more than ${lost.share} of those who pay singles go, ${lost.people}.`;
}

function allSentence({ from, until, lost }: Said): string {
  if (lost === null)
    return `With every price up by as much in proportion a head still costs more than it brings.`;
  return `With every price up by as much in proportion, one person brings ${until} instead of ${from}, and an evening stays level while no more than ${lost.share} of all the people go, ${lost.people}.`;
}

function lostWords({ loss }: Rise, heads: number | null): Lost | null {
  if (loss === null || heads === null) return null;
  return { share: chanceText(Math.min(1, loss.valueOf())), people: people(heads, 1) };
}

function headsOf({ loss, share }: Rise, { demand }: Asked): number | null {
  return loss === null ? null : Math.min(1, loss.valueOf()) * share.valueOf() * demand.mean;
}

/** Δ ÷ (p + Δ − v), line by line, for the single and for the whole mix. */
export function riseLines({ rises }: PriceSums, question: PriceQuestion): readonly WorkingLine[] {
  return rises.flatMap(({ single, all }) => [
    ...(single === null ? [] : levelLines("The single", single, question)),
    ...(all === null ? [] : levelLines("One person on average", all, question)),
  ]);
}

function levelLines(what: string, rise: Rise, question: Asked): readonly WorkingLine[] {
  const { currency, perHead, demand } = question;
  const text = (exact: ExactMinor): string => exactText(exact, currency);
  const margin = rise.until.sub(perHead);
  const more = rise.until.sub(rise.from);
  const before = plainDecimal(rise.share.valueOf() * demand.mean, 2);
  return [
    { label: `${what}, from ${text(rise.from)} to ${text(rise.until)}`, sum: "", amount: text(more) },
    {
      label: "Then leaves",
      sum: `${text(rise.until)} − ${text(new Fraction(perHead))} cost per head`,
      amount: text(margin),
    },
    rise.loss === null
      ? { label: "May go", sum: "a head leaves nothing", amount: "nobody", total: true }
      : {
          label: `May go, of ${before} people`,
          sum: `${text(more)} ÷ ${text(margin)}`,
          amount: chanceText(Math.min(1, rise.loss.valueOf())),
          total: true,
        },
  ];
}
