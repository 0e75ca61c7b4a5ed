/** One figure that an answer rests on, and how it may be turned: 9.50 in steps of 0.10 from 0 to 100. */
export type Dial = {
  /** its path in the document */
  readonly path: string;
  /** what it is called in a sentence: "the single price" */
  readonly name: string;
  /** money is in minor units */
  readonly unit: "money" | "people" | "minutes" | "plain";
  readonly now: number;
  readonly step: number;
  readonly least: number;
  readonly most: number;
  readonly guess: boolean;
};

export type Flip<Decision> = {
  readonly dial: Dial;
  /** the value nearest to now, in whole steps, at which the decision is another; null when none is in reach */
  readonly at: number | null;
  /** the decision there; null when it stays */
  readonly becomes: Decision | null;
  /** the change as a share of now: 0.1 is a tenth more or less; of the most that is possible when now is 0 */
  readonly nearness: number | null;
};

/**
 * By how much each figure would have to be wrong, alone, before the decision changes: the exact decision is asked
 * again with each. The nearest comes first, those that change nothing last. Steps double until the decision
 * differs and are then halved, so a decision that turns and turns back within one doubling is passed over.
 */
export function whatWouldChange<Decision extends string | boolean>(
  dials: readonly Dial[],
  decide: (dial: Dial, value: number) => Decision,
): readonly Flip<Decision>[] {
  const flips = dials.map((dial) => flipOf(dial, decide));
  return flips.sort((a, b) => (a.nearness ?? Number.MAX_VALUE) - (b.nearness ?? Number.MAX_VALUE));
}

type Decide<Decision> = (dial: Dial, value: number) => Decision;

function flipOf<Decision>(dial: Dial, decide: Decide<Decision>): Flip<Decision> {
  const now = decide(dial, dial.now);
  const differs = (steps: number): boolean => decide(dial, valueAt(dial, steps)) !== now;
  const up = firstStep(Math.floor((dial.most - dial.now) / dial.step + SLACK), (steps) => differs(steps));
  const down = firstStep(Math.floor((dial.now - dial.least) / dial.step + SLACK), (steps) => differs(-steps));
  const steps = nearer(up, down === null ? null : -down);
  if (steps === null) return { dial, at: null, becomes: null, nearness: null };
  const at = valueAt(dial, steps);
  // a figure far below its own step is nothing: a share of it would be endless
  const whole = Math.abs(dial.now) < dial.step * SLACK ? dial.most : Math.abs(dial.now);
  return { dial, at, becomes: decide(dial, at), nearness: Math.abs(at - dial.now) / whole };
}

// 0.3 ÷ 0.1 is 2.9999999999999996
const SLACK = 1e-9;

/** The least number of steps at which it differs, 1 to most, by doubling and then halving. */
function firstStep(most: number, differs: (steps: number) => boolean): number | null {
  let same = 0;
  let reach = 1;
  while (same < most) {
    const tried = Math.min(reach, most);
    if (differs(tried)) return halved(same, tried, differs);
    same = tried;
    reach *= 2;
  }
  return null;
}

function halved(from: number, until: number, differs: (steps: number) => boolean): number {
  let [same, other] = [from, until];
  while (other - same > 1) {
    const middle = Math.floor((same + other) / 2);
    if (differs(middle)) other = middle;
    else same = middle;
  }
  return other;
}

function nearer(up: number | null, down: number | null): number | null {
  if (up === null || down === null) return up ?? down;
  return up <= -down ? up : down;
}

/** In doubles 9.5 + 3 × 0.1 has a tail; no dial is finer than six decimals. */
function valueAt(dial: Dial, steps: number): number {
  // −0 reads like a slip
  return Number((dial.now + steps * dial.step).toFixed(6)) + 0;
}
