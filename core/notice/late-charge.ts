/**
 * What giving up a place, or not coming, costs: nothing when it was in time, when the place was taken from the
 * waiting list, when it is the first time and that is waived, or when it was charged before.
 *
 * Example: late, nobody took the place, late once before → charged; the same for the first time → waived.
 */
export type LateCharge = {
  readonly charged: boolean;
  readonly why: ChargeReason;
  /** this lateness used up the first that is waived */
  readonly waived: boolean;
  readonly sentence: string;
};

export type ChargeReason =
  | "nothing-to-charge"
  | "charged-before"
  | "in-time"
  | "place-filled"
  | "first-waived"
  | "late"
  | "not-come";

export type LateAsked = {
  readonly what: "given-up" | "not-come";
  /** as `noticeOf` found it; who does not come is always late */
  readonly late: boolean;
  /** how the place was held */
  readonly heldBy: "pass" | "block" | "single" | "concession" | "free" | "guest";
  /** how often this person was late or did not come before, the waived time included */
  readonly before: number;
  /** whether the house rules waive the first time */
  readonly firstWaived: boolean;
  /** somebody from the waiting list took the place */
  readonly filled: boolean;
  /** this place was charged already */
  readonly chargedBefore: boolean;
};

export function lateCharge(asked: LateAsked): LateCharge {
  const why = reasonOf(asked);
  const charged = why === "late" || why === "not-come";
  return { charged, why, waived: why === "first-waived", sentence: sentenceOf(why, asked) };
}

/** The order matters: a place that was filled does not use up the first time that is waived. */
function reasonOf(asked: LateAsked): ChargeReason {
  if (!Number.isInteger(asked.before) || asked.before < 0)
    throw new RangeError(`late before: ${asked.before}`);
  if (asked.heldBy === "free" || asked.heldBy === "guest") return "nothing-to-charge";
  if (asked.chargedBefore) return "charged-before";
  if (asked.what === "given-up" && !asked.late) return "in-time";
  if (asked.filled) return "place-filled";
  if (asked.firstWaived && asked.before === 0) return "first-waived";
  return asked.what === "not-come" ? "not-come" : "late";
}

function sentenceOf(why: ChargeReason, { heldBy, what }: LateAsked): string {
  switch (why) {
    case "nothing-to-charge":
      return "Nothing is charged: the place was free.";
    case "charged-before":
      return "Nothing more is charged: this place was charged already.";
    case "in-time":
      return "Nothing is charged.";
    case "place-filled":
      return "Nothing is charged: somebody who waited took the place.";
    case "first-waived":
      return what === "not-come"
        ? "Nothing is charged this time, as it is the first. Next time, please give the place up so that somebody else can have it."
        : "Nothing is charged this time, as it is the first time that it was late.";
    case "late":
    case "not-come":
      return chargedWords(heldBy);
  }
}

function chargedWords(heldBy: LateAsked["heldBy"]): string {
  switch (heldBy) {
    case "pass":
      return "One class is taken off the pass.";
    case "block":
      return "It counts as one of the sessions of the block.";
    case "single":
    case "concession":
      return "The price of the place stays due.";
    case "free":
    case "guest":
      throw new RangeError(`a ${heldBy} place is never charged`);
  }
}
