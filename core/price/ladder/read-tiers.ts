import {
  bad,
  type CurrencyCode,
  good,
  type Minor,
  minor,
  problem,
  type Result,
  readAmount,
  together,
  togetherInOrder,
} from "#core/words";
import { Fraction } from "fraction.js";
import { type MixKeys, readMix, type Share } from "../read-mix.ts";
import { type Prices, readPrices } from "../read-prices.ts";
import type { LadderPrices } from "./ladder-document.ts";
import { courseSize, isTierKey, type Tier, type TierKind } from "./tier.ts";

const keys: MixKeys = {
  isKnown: isTierKey,
  next: "Use single, concession, free, pay-what-you-can, pass-10 for a pass of ten or course-6 for a block of six.",
};

/**
 * The ladder of prices joined with who pays by which rung: every price that is stated, also those that nobody
 * pays yet, and the free places of the mix. Problems: those of prices and of a mix, "price-missing",
 * "course-size", "course-twice", "average-below-floor".
 */
export function readTiers(
  prices: LadderPrices,
  mix: Readonly<Record<string, number>>,
  currency: CurrencyCode,
): Result<readonly Tier[]> {
  const read = together({
    prices: readPrices(prices, currency),
    courses: readCourses(prices.courses, currency),
    chosen: readPayWhatYouCan(prices.payWhatYouCan, currency),
    shares: readMix(mix, "mix", keys),
  });
  if (!read.ok) return read;
  const { shares, courses, chosen } = read.value;
  const rungs = [...pricedRungs(read.value.prices), ...courses, ...chosen, free];
  const missing = shares.filter(({ key, share }) => share.gt(0) && !rungs.some((rung) => rung.key === key));
  if (missing.length > 0) return bad(...missing.map(priceMissing));
  const tiers = rungs.map((rung) => tierOf(rung, shares));
  return good(tiers.filter(({ kind, share }) => kind !== "free" || share.gt(0)));
}

type Rung = Pick<Tier, "key" | "kind" | "place" | "price" | "classes"> & { readonly floor?: Minor };

const free: Rung = { key: "free", kind: "free", place: "mix.free", price: minor(0), classes: 1 };

function pricedRungs({ single, concession, passes }: Prices): readonly Rung[] {
  return [
    ...oneClass("single", single),
    ...passes.map(({ classes, price }, index): Rung => {
      return { key: `pass-${classes}`, kind: "pass", place: `prices.passes[${index}]`, price, classes };
    }),
    ...oneClass("concession", concession),
  ];
}

function oneClass(kind: TierKind, price: Minor | null): readonly Rung[] {
  return price === null ? [] : [{ key: kind, kind, place: `prices.${kind}`, price, classes: 1 }];
}

function readCourses(courses: LadderPrices["courses"], currency: CurrencyCode): Result<readonly Rung[]> {
  const sizes = courses.map(({ sessions }) => sessions);
  return togetherInOrder(
    courses.map(({ sessions, price }, index) => {
      const place = `prices.courses[${index}]`;
      const read = together({
        size: readCourseSize(sessions, sizes.indexOf(sessions) < index, `${place}.sessions`),
        price: readAmount(price, currency, `${place}.price`),
      });
      if (!read.ok) return read;
      return good<Rung>({
        key: `course-${sessions}`,
        kind: "course",
        place,
        price: read.value.price,
        classes: sessions,
      });
    }),
  );
}

function readCourseSize(sessions: number, again: boolean, place: string): Result<number> {
  if (courseSize(`course-${sessions}`) === null) {
    const says = `A course cannot have ${sessions} sessions.`;
    return bad(problem("course-size", place, says, "Give a whole number of sessions, 1 to 999."));
  }
  if (!again) return good(sessions);
  return bad(
    problem("course-twice", place, `There are two courses of ${sessions} sessions.`, "Keep one of them."),
  );
}

function readPayWhatYouCan(
  chosen: LadderPrices["payWhatYouCan"],
  currency: CurrencyCode,
): Result<readonly Rung[]> {
  if (chosen === undefined) return good([]);
  const read = together({
    floor: readAmount(chosen.floor, currency, "prices.payWhatYouCan.floor"),
    average: readAmount(chosen.average ?? chosen.floor, currency, "prices.payWhatYouCan.average"),
  });
  if (!read.ok) return read;
  const { floor, average } = read.value;
  const place = "prices.payWhatYouCan";
  if (average >= floor) {
    return good([
      { key: "pay-what-you-can", kind: "pay-what-you-can", place, price: average, classes: 1, floor },
    ]);
  }
  const says = "People cannot give less on average than the floor.";
  return bad(
    problem("average-below-floor", `${place}.average`, says, "Raise the average or lower the floor."),
  );
}

function priceMissing({ key }: Share) {
  const says = `Part of the mix pays by “${key}”, which has no price.`;
  return problem("price-missing", `mix.${key}`, says, "Add the price or take it out of the mix.");
}

function tierOf({ floor, ...rung }: Rung, shares: readonly Share[]): Tier {
  const perClass = new Fraction(rung.price).div(rung.classes);
  return {
    ...rung,
    perClass,
    least: floor === undefined ? perClass : new Fraction(floor),
    share: shares.find(({ key }) => key === rung.key)?.share ?? new Fraction(0),
  };
}
