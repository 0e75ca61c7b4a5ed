import { currencyDigits, isCurrency, type PracticeDocument } from "#core/words";
import { Temporal } from "temporal-polyfill";
import type { ClassDocument } from "./class-document.ts";
import { schoolYear } from "./school-year.ts";

export type EmptyClass = {
  readonly practice: Pick<PracticeDocument, "currency" | "locale">;
  /** YYYY-MM-DD, to choose the teaching year; throws when it is no date */
  readonly today: string;
  readonly hall?: string;
};

/**
 * The class that a new sheet begins with: planning figures that are common practice for classes in hired
 * halls, without a source of their own, every one of them listed as a guess.
 */
export function emptyClass({ practice, today, hall }: EmptyClass): ClassDocument {
  const { costs, prices, fixedPerYear } = amountsIn(practice.currency);
  return {
    format: "hallful/class@1",
    name: "New class",
    whoFor: "",
    hall: hall ?? null,
    weekday: 2,
    start: "18:30",
    minutes: { setUp: 20, class: 75, packDown: 15, travel: 40, preparation: 30, admin: 20 },
    mats: null,
    matsOwned: null,
    ownCap: null,
    insurerCap: null,
    costs,
    prices,
    mix: { single: 0.3, "pass-10": 0.5, concession: 0.15, free: 0.05 },
    heads: 8,
    year: { ...schoolYear(Temporal.PlainDate.from(today), practice.locale), fixedPerYear },
    guesses: [...GUESSES],
  };
}

const GUESSES = [
  "weekday",
  "start",
  "minutes.setUp",
  "minutes.class",
  "minutes.packDown",
  "minutes.travel",
  "minutes.preparation",
  "minutes.admin",
  "costs.travel",
  "costs.music",
  "costs.cover",
  "costs.other",
  "costs.perHead",
  "prices.single",
  "prices.passes",
  "prices.concession",
  "mix",
  "heads",
  "year.from",
  "year.until",
  "year.closures",
  "year.fixedPerYear",
];

type Amounts = Pick<ClassDocument, "costs" | "prices"> & { readonly fixedPerYear: string };

/**
 * Pounds and dollars from practice. In another currency the pounds stand there to be overwritten, a
 * hundred times as many where the currency has no small coin. The fixed costs are insurance, first aid,
 * a data fee where there is one and some training, for a practice of one class.
 */
function amountsIn(currency: string): Amounts {
  const none = { music: "0", cover: "0", other: "0" };
  if (currency === "USD") {
    return {
      costs: { travel: "4.00", ...none, perHead: "0.30" },
      prices: { single: "15.00", passes: [{ classes: 10, price: "130.00" }], concession: "12.00" },
      fixedPerYear: "350.00",
    };
  }
  if (isCurrency(currency) && currencyDigits(currency) === 0) {
    return {
      costs: { travel: "300", ...none, perHead: "20" },
      prices: { single: "1000", passes: [{ classes: 10, price: "8500" }], concession: "800" },
      fixedPerYear: "25000",
    };
  }
  return {
    costs: { travel: "3.00", ...none, perHead: "0.20" },
    prices: { single: "10.00", passes: [{ classes: 10, price: "85.00" }], concession: "8.00" },
    fixedPerYear: "250.00",
  };
}
