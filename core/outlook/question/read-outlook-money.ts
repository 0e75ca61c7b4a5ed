import {
  bad,
  type CurrencyCode,
  currencyDigits,
  type ExactMinor,
  good,
  problem,
  readAmount,
  readDate,
  type Result,
  together,
  togetherInOrder,
} from "#core/words";
import { Fraction } from "fraction.js";
import { Temporal } from "temporal-polyfill";
import { readCount, readMean } from "../read-count.ts";
import { readCurrencyFor } from "../read-currency-for.ts";
import type { OutlookDocument } from "./outlook-document.ts";
import type { EveningChoice, Notice, OutlookMoney } from "./outlook-question.ts";

const PEOPLE = { least: 0, most: 1000 };

/** Problems: "currency-missing", "currency-unknown", those of amounts. */
export function readMoneyOf({ money, currency }: OutlookDocument): Result<OutlookMoney | null> {
  if (money === undefined) return good(null);
  const known = readCurrencyFor(currency, "money");
  if (!known.ok) return known;
  const read = together({
    yielded: readYield(money.yield, known.value),
    perHead: readAmount(money.perHead, known.value, "money.perHead"),
    cost: readAmount(money.cost, known.value, "money.cost"),
  });
  if (!read.ok) return read;
  const { yielded, perHead } = read.value;
  return good({ ...read.value, currency: known.value, margin: yielded.sub(perHead) });
}

const FINE = /^\d{1,9}(\.\d{1,8})?$/;

/** An average, so parts of a coin are right: "7.685". */
function readYield(text: string, currency: CurrencyCode): Result<ExactMinor> {
  if (FINE.test(text.trim())) return good(new Fraction(text.trim()).mul(10 ** currencyDigits(currency)));
  const read = readAmount(text, currency, "money.yield");
  return read.ok ? good(new Fraction(read.value)) : read;
}

/** Problems: "notice-without-money", those of dates, counts and amounts. */
export function readNotice({ notice, money, currency }: OutlookDocument): Result<Notice | null> {
  if (notice === undefined) return good(null);
  if (money === undefined) return bad(noMoney());
  const known = readCurrencyFor(currency, "notice");
  // a currency that is missing is told with the money
  if (!known.ok) return good(null);
  const read = together({
    days: readCount(notice.days, "notice.days", "days of notice", { least: 0, most: 730 }),
    dates: togetherInOrder(notice.dates.map((date, at) => readDate(date, `notice.dates[${at}]`))),
    term: readCount(notice.term, "notice.term", "sessions of a term", { least: 1, most: 60 }),
    otherUse: readAmount(notice.otherUse, known.value, "notice.otherUse"),
    exitCost: readAmount(notice.exitCost, known.value, "notice.exitCost"),
  });
  if (!read.ok) return read;
  return good({
    ...read.value,
    dates: read.value.dates.toSorted((one, other) => Temporal.PlainDate.compare(one, other)),
  });
}

function noMoney() {
  const says = "Whether to keep a class cannot be said without what a person brings and a session costs.";
  return problem("notice-without-money", "money", says, "Give the yield and the cost of a session.");
}

type Choices = { readonly tonight: EveningChoice | null; readonly cover: EveningChoice | null };

export function readEveningChoices(document: OutlookDocument): Result<Choices> {
  const { tonight, cover } = document;
  return together({
    tonight: tonight === undefined ? good(null) : readChoice(document, tonight, "tonight", "avoidable"),
    cover: cover === undefined ? good(null) : readChoice(document, cover, "cover", "fee"),
  });
}

type EveningDocument = NonNullable<OutlookDocument["tonight"] | OutlookDocument["cover"]>;

function readChoice(
  { money, currency }: OutlookDocument,
  evening: EveningDocument,
  place: "tonight" | "cover",
  spending: "avoidable" | "fee",
): Result<EveningChoice | null> {
  if (money === undefined) return bad(eveningWithoutMoney(place));
  const known = readCurrencyFor(currency, place);
  if (!known.ok) return good(null);
  const asked =
    spending === "fee" && "fee" in evening ? evening.fee : "avoidable" in evening ? evening.avoidable : "0";
  const read = together({
    expected: readMean(evening.expected, `${place}.expected`, "people", PEOPLE),
    booked:
      evening.booked === undefined
        ? good(null)
        : readCount(evening.booked, `${place}.booked`, "people", PEOPLE),
    hall: readAmount(evening.hall, known.value, `${place}.hall`),
    cancelling: readAmount(evening.cancelling, known.value, `${place}.cancelling`),
    spent: readAmount(asked, known.value, `${place}.${spending}`),
    yielded: readYield(money.yield, known.value),
    perHead: readAmount(money.perHead, known.value, "money.perHead"),
  });
  // the money's own problems are told with the money
  if (!read.ok) {
    const own = read.problems.filter((it) => it.place.startsWith(place));
    return own.length > 0 ? bad(...own) : good(null);
  }
  const { booked, spent, yielded, perHead, ...rest } = read.value;
  const margin = yielded.sub(perHead).valueOf();
  return good({ booked, spent, evening: { ...rest, margin, hallPastNotice: evening.hallPastNotice } });
}

function eveningWithoutMoney(place: string) {
  const says = "What an evening is worth cannot be said without what a person brings.";
  return problem(
    "evening-without-money",
    place,
    says,
    "Give the yield and the cost of a session in “money”.",
  );
}
