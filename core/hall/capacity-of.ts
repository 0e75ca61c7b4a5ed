import type { Capacity, CapacityLimit, MatPlan } from "./mat-plan-types.ts";

/** Numbers of people on mats, but for the posted one, which counts everybody in the room. Null is not known. */
export type CapacityLimits = {
  readonly postedCapacity?: number | null | undefined;
  /** teacher and helpers; 1 unless told */
  readonly peopleNotOnMats?: number | undefined;
  readonly matsOwned?: number | null | undefined;
  readonly ownCap?: number | null | undefined;
  readonly insurerCap?: number | null | undefined;
};

/** Said beside every capacity, never instead of it. */
export const capacityCaution =
  "The hall’s posted number, its fire risk assessment and the fire service decide how many people may be in the room; a mat plan does not. Keep the ways to the exits clear.";

/**
 * How many can come: the least of the floor, the posted number less who is not on a mat, the mats she has, her own
 * cap and her insurer's. Every limit that is equal to it is named, the floor first. Never below 0.
 */
export function capacityOf(
  plan: Pick<MatPlan, "count" | "bound" | "proven">,
  limits: CapacityLimits = {},
): Capacity {
  const all = [
    { limit: "floor" as const, people: plan.count, says: floorSays(plan) },
    ...statedLimits(limits),
  ];
  const capacity = Math.min(...all.map((it) => it.people));
  const limitedBy = all.filter((it) => it.people === capacity).map((it) => it.limit);
  return { capacity, limitedBy, sentence: sentenceOf(all, capacity, limitedBy) };
}

type Stated = { readonly limit: CapacityLimit; readonly people: number; readonly says: string };

function statedLimits(limits: CapacityLimits): readonly Stated[] {
  const { postedCapacity, peopleNotOnMats = 1, matsOwned, ownCap, insurerCap } = limits;
  return [
    ...stated(postedCapacity, (posted) => postedLimit(posted, peopleNotOnMats)),
    ...stated(matsOwned, (mats) => ({
      limit: "mats owned",
      people: mats,
      says: mats === 1 ? "there is 1 mat to lie on" : `there are ${mats} mats to lie on`,
    })),
    ...stated(ownCap, (cap) => ({ limit: "own cap", people: cap, says: `you want at most ${cap}` })),
    ...stated(insurerCap, (cap) => ({ limit: "insurer", people: cap, says: `your insurer covers ${cap}` })),
  ];
}

function stated(count: number | null | undefined, limit: (count: number) => Stated): readonly Stated[] {
  return count === null || count === undefined ? [] : [limit(count)];
}

function postedLimit(posted: number, peopleNotOnMats: number): Stated {
  const people = Math.max(0, posted - peopleNotOnMats);
  const says = `the hall’s own limit is ${posted}, which leaves ${people}${beside(peopleNotOnMats)}`;
  return { limit: "posted number", people, says };
}

function beside(peopleNotOnMats: number): string {
  if (peopleNotOnMats === 0) return "";
  if (peopleNotOnMats === 1) return " beside you";
  const others = peopleNotOnMats - 1;
  return ` beside you and ${others} ${others === 1 ? "other" : "others"}`;
}

function floorSays({ count, bound, proven }: Pick<MatPlan, "count" | "bound" | "proven">): string {
  if (count === 0 && proven) return "No mat fits";
  const fit = `${count} ${count === 1 ? "mat fits" : "mats fit"}`;
  return proven ? fit : `${fit}, perhaps up to ${bound}`;
}

const limitWords: Readonly<Record<CapacityLimit, string>> = {
  floor: "the floor",
  "posted number": "the hall’s own limit",
  "mats owned": "the number of mats",
  "own cap": "your own cap",
  insurer: "your insurer’s cap",
};

function sentenceOf(all: readonly Stated[], capacity: number, limitedBy: readonly CapacityLimit[]): string {
  const come = capacity === 0 ? "nobody can come" : `${capacity} can come`;
  const names = limitedBy.map((limit) => limitWords[limit]);
  const set = names.length === 1 ? "sets it" : "set it";
  return `${all.map((it) => it.says).join("; ")}; so ${come}: ${listed(names)} ${set}.`;
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
