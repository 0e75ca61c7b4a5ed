import { type CountModel, expectedMinimum, expectedOver } from "#kernels/statistics";

// 2.8 are turned away a session and leave 7.70 each: even if all of them came elsewhere, 21.70 is less than 27.00.

/** A class whose sessions fill; amounts in minor units, a session. */
export type FullClass = {
  readonly demand: CountModel;
  readonly capacity: number;
  /** y − v */
  readonly margin: number;
};

export type Remedy = {
  readonly kind: "tighter plan" | "released absences" | "price rise" | "bigger hall" | "second class";
  /** what it leaves a session beyond what is left now */
  readonly gain: number;
};

export type Remedies = {
  /** mats that a tighter plan would add */
  readonly extraMats: number;
  /** places that are paid for and known to stay empty each session */
  readonly absences: number;
  /** a rise, in minor units; and the share who would go for it */
  readonly rise: number;
  readonly riseLoses: number;
  readonly biggerHall: { readonly capacity: number; readonly extraCost: number } | null;
  readonly secondClass: {
    readonly cost: number;
    /** of those turned away, who would come at the other time */
    readonly shareWhoWouldCome: number;
    /** people a session who could only come then */
    readonly ownPeople: number;
  } | null;
};

/**
 * What would help a class that fills, the cheaper things first: more mats, absences given to others, a small rise, and
 * only then a bigger hall or a second class: E[(D − K)+]·(y − v)·share + its own people − its cost. Method: methods 5,
 * trade F12 and F13.
 */
export function remediesFor(full: FullClass, remedies: Remedies): readonly Remedy[] {
  const { extraMats, absences, rise, biggerHall, secondClass } = remedies;
  return [
    ...(extraMats > 0 ? [{ kind: "tighter plan" as const, gain: morePlaces(full, extraMats) }] : []),
    ...(absences > 0 ? [{ kind: "released absences" as const, gain: morePlaces(full, absences) }] : []),
    ...(rise > 0 ? [{ kind: "price rise" as const, gain: riseGain(full, remedies) }] : []),
    ...(biggerHall === null
      ? []
      : [
          {
            kind: "bigger hall" as const,
            gain: morePlaces(full, biggerHall.capacity - full.capacity) - biggerHall.extraCost,
          },
        ]),
    ...(secondClass === null ? [] : [{ kind: "second class" as const, gain: secondGain(full, secondClass) }]),
  ];
}

/** Turned away on average, E[(D − K)+]. */
export function turnedAwayOf({ demand, capacity }: FullClass): number {
  return expectedOver(demand, capacity);
}

function morePlaces({ demand, capacity, margin }: FullClass, places: number): number {
  return margin * (expectedMinimum(demand, capacity + places) - expectedMinimum(demand, capacity));
}

function riseGain({ demand, capacity, margin }: FullClass, { rise, riseLoses }: Remedies): number {
  const fewer = { ...demand, mean: demand.mean * (1 - riseLoses) };
  return (margin + rise) * expectedMinimum(fewer, capacity) - margin * expectedMinimum(demand, capacity);
}

function secondGain(full: FullClass, second: NonNullable<Remedies["secondClass"]>): number {
  const people = turnedAwayOf(full) * second.shareWhoWouldCome + second.ownPeople;
  return people * full.margin - second.cost;
}
