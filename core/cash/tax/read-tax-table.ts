import {
  bad,
  type CurrencyCode,
  good,
  type Problem,
  problem,
  readAmount,
  readCurrency,
  readDate,
  readExact,
  type Result,
  together,
  togetherInOrder,
} from "#core/words";
import type { Fraction } from "fraction.js";
import type { TaxTableDocument, UkTableDocument, UsTableDocument } from "./tax-table-document.ts";
import type { Band, TaxTable } from "./tax-types.ts";

/** Problems: "tax-rate-out-of-range", "tax-bands-order", "tax-table-span", and those of amounts and dates. */
export function readTaxTable(document: TaxTableDocument, place: string): Result<TaxTable> {
  const currency = readCurrency(document.currency, `${place}.currency`);
  if (!currency.ok) return currency;
  const span = readSpan(document, place);
  const reader = { currency: currency.value, place };
  const read = document.rules === "uk" ? readUk(document, reader) : readUs(document, reader);
  if (!span.ok) return span;
  if (!read.ok) return read;
  const { id, name, sources } = document;
  const heading = { id, name, sources, place: document.place, currency: currency.value };
  return good({ ...heading, ...span.value, ...read.value });
}

type Reader = { readonly currency: CurrencyCode; readonly place: string };

function readSpan(document: TaxTableDocument, place: string) {
  const read = together({
    from: readDate(document.from, `${place}.from`),
    until: readDate(document.until, `${place}.until`),
  });
  if (!read.ok) return read;
  const { from, until } = read.value;
  const days = from.until(until, { largestUnit: "days" }).days;
  if (days >= 364 && days <= 365) return good({ from, until });
  const says = `“${document.name.slice(0, 40)}” holds from ${document.from} until ${document.until}, which is no tax year.`;
  const next = "Give the first and the last day of one tax year.";
  return bad(problem("tax-table-span", `${place}.until`, says, next));
}

function readUk(document: UkTableDocument, reader: Reader) {
  const amount = amountIn(reader);
  const rate = rateIn(reader);
  const { allowance, class4, class2, onAccount } = document;
  return together({
    rules: good("uk" as const),
    allowance: together({
      amount: amount(allowance.amount, "allowance.amount"),
      taperFrom: amount(allowance.taperFrom, "allowance.taperFrom"),
    }),
    bands: readBands(document.bands, "bands", reader),
    class4: readClass4(class4, reader),
    class2: together({
      aWeek: amount(class2.aWeek, "class2.aWeek"),
      smallProfits: amount(class2.smallProfits, "class2.smallProfits"),
    }),
    tradingAllowance: amount(document.tradingAllowance, "tradingAllowance"),
    onAccount: together({
      from: amount(onAccount.from, "onAccount.from"),
      atSource: rate(onAccount.atSource, "onAccount.atSource"),
    }),
  });
}

function readClass4(class4: UkTableDocument["class4"], reader: Reader) {
  const amount = amountIn(reader);
  const rate = rateIn(reader);
  const read = together({
    from: amount(class4.from, "class4.from"),
    upTo: amount(class4.upTo, "class4.upTo"),
    rate: rate(class4.rate, "class4.rate"),
    above: rate(class4.above, "class4.above"),
  });
  if (!read.ok || read.value.from <= read.value.upTo) return read;
  return bad(outOfOrder(`${reader.place}.class4.upTo`));
}

function readUs(document: UsTableDocument, reader: Reader) {
  const amount = amountIn(reader);
  const rate = rateIn(reader);
  const { selfEmployment: work, deduction, bands } = document;
  return together({
    rules: good("us" as const),
    selfEmployment: together({
      share: rate(work.share, "selfEmployment.share"),
      social: rate(work.social, "selfEmployment.social"),
      socialUpTo: amount(work.socialUpTo, "selfEmployment.socialUpTo"),
      medicare: rate(work.medicare, "selfEmployment.medicare"),
      least: amount(work.least, "selfEmployment.least"),
      deductible: rate(work.deductible, "selfEmployment.deductible"),
      extra: together({
        rate: rate(work.extra.rate, "selfEmployment.extra.rate"),
        single: amount(work.extra.single, "selfEmployment.extra.single"),
        joint: amount(work.extra.joint, "selfEmployment.extra.joint"),
      }),
    }),
    deduction: together({
      single: amount(deduction.single, "deduction.single"),
      joint: amount(deduction.joint, "deduction.joint"),
    }),
    bands: together({
      single: readBands(bands.single, "bands.single", reader),
      joint: readBands(bands.joint, "bands.joint", reader),
    }),
    instalmentsFrom: amount(document.instalmentsFrom, "instalmentsFrom"),
  });
}

function amountIn({ currency, place }: Reader) {
  return (text: string, key: string) => readAmount(text, currency, `${place}.${key}`);
}

function rateIn({ place }: Reader) {
  return (rate: number, key: string): Result<Fraction> =>
    readExact(
      rate,
      `${place}.${key}`,
      { least: 0, most: 1 },
      {
        code: "tax-rate-out-of-range",
        says: `A rate of ${rate} cannot be meant.`,
        next: "Give a share between 0 and 1: 0.2 is a fifth.",
      },
    );
}

type BandDocuments = UkTableDocument["bands"];

/** Each band ends above the one before, and the last has no end. */
function readBands(bands: BandDocuments, key: string, reader: Reader): Result<readonly Band[]> {
  const read = togetherInOrder(
    bands.map(({ upTo, rate }, at) =>
      together({
        upTo: upTo === null ? good(null) : amountIn(reader)(upTo, `${key}[${at}].upTo`),
        rate: rateIn(reader)(rate, `${key}[${at}].rate`),
      }),
    ),
  );
  if (!read.ok) return read;
  const ends = read.value.map(({ upTo }) => upTo ?? Number.POSITIVE_INFINITY);
  const sound =
    ends.at(-1) === Number.POSITIVE_INFINITY &&
    ends.every((end, at) => at === 0 || end > (ends[at - 1] ?? 0));
  return sound ? read : bad(outOfOrder(`${reader.place}.${key}`));
}

function outOfOrder(place: string): Problem {
  const next = "Give the lowest first, each end above the one before, and null as the end of the last.";
  return problem("tax-bands-order", place, "The bands do not follow one another.", next);
}
