import { type Moments, momentsOf } from "./bg-nbd.ts";
import { type Fitted, mostLikely } from "./fitted.ts";
import { logOfSum, risingLogs } from "./rising-logs.ts";

/**
 * One chance to come at a time, as in a weekly class: while somebody still comes, each chance is taken with a
 * chance of Beta(alpha, beta); before each, the person stops for good with a chance of Beta(gamma, delta).
 * P. Fader, B. Hardie and J. Shang, Marketing Science 29(6), 2010.
 */
export type BgBb = {
  readonly alpha: number;
  readonly beta: number;
  readonly gamma: number;
  readonly delta: number;
};

/** Of `chances` after the first visit `taken` were, the last of them the `last`-th; 0 where none was. */
export type Taken = { readonly taken: number; readonly last: number; readonly chances: number };

/** ln of the chance of having been seen like this, by which chances were taken and not only how many. */
export function bgBbLogLikelihood(parameters: BgBb, seen: Taken): number {
  return tablesFor(parameters, mustBeTaken(seen).chances).logOf(seen);
}

/** The chance that the person is still there at the next chance, `ahead` of 1, or at a later one. */
export function chanceThereAt(parameters: BgBb, seen: Taken, ahead: number): number {
  const { chances, taken } = mustBeTaken(seen);
  const tables = tablesFor(parameters, chances + ahead);
  return Math.exp(tables.taking(taken, chances) + tables.staying(chances + ahead) - tables.logOf(seen));
}

/** Visits to expect in the next `ahead` chances. */
export function expectedTaken(parameters: BgBb, seen: Taken, ahead: number): number {
  return takenMoments(parameters, seen, ahead).mean;
}

/** The mean and the variance of the visits in the next `ahead` chances, as far as the parameters are right. */
export function takenMoments(parameters: BgBb, seen: Taken, ahead: number): Moments {
  const { chances, taken } = mustBeTaken(seen);
  const tables = tablesFor(parameters, chances + ahead + 2);
  const one = tables.taking(taken + 1, chances + 1) - tables.logOf(seen);
  const two = tables.taking(taken + 2, chances + 2) - tables.logOf(seen);
  let mean = 0;
  let pairs = 0;
  for (let step = 1; step <= ahead; step += 1) {
    const staying = tables.staying(chances + step);
    mean += Math.exp(one + staying);
    // who is there at this chance was there at every one before
    pairs += 2 * (step - 1) * Math.exp(two + staying);
  }
  return momentsOf(mean, pairs);
}

/** The chance of at least one visit in the next `ahead` chances: seeing none is being seen like this for longer. */
export function chanceOfTaking(parameters: BgBb, seen: Taken, ahead: number): number {
  const { chances } = mustBeTaken(seen);
  const tables = tablesFor(parameters, chances + ahead);
  return -Math.expm1(tables.logOf({ ...seen, chances: chances + ahead }) - tables.logOf(seen));
}

/** The four that fit best; people alike are worked out once. Throws when nobody had a chance. */
export function fitBgBb(people: readonly Taken[]): Fitted<BgBb> {
  const groups = new Map<string, { seen: Taken; people: number }>();
  for (const seen of people) {
    const { taken, last, chances } = mustBeTaken(seen);
    const key = `${taken} ${last} ${chances}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { seen, people: 1 });
    else group.people += 1;
  }
  const alike = [...groups.values()];
  const most = Math.max(0, ...alike.map(({ seen }) => seen.chances));
  if (most === 0) throw new RangeError(`chances of anybody: ${most}`);
  const logLikelihoodAt = ([alpha = 0, beta = 0, gamma = 0, delta = 0]: readonly number[]): number => {
    const tables = tablesFor({ alpha, beta, gamma, delta }, most);
    return alike.reduce((sum, it) => sum + it.people * tables.logOf(it.seen), 0);
  };
  const found = mostLikely(logLikelihoodAt, [
    [1, 1, 1, 3],
    [1, 1, 0.5, 20],
  ]);
  const [alpha = 0, beta = 0, gamma = 0, delta = 0] = found.parameters;
  return { ...found, parameters: { alpha, beta, gamma, delta } };
}

function tablesFor({ alpha, beta, gamma, delta }: BgBb, most: number) {
  const takes = risingLogs(alpha, most);
  const leaves = risingLogs(beta, most);
  const both = risingLogs(alpha + beta, most);
  const stays = risingLogs(delta, most);
  const all = risingLogs(gamma + delta, most + 1);
  /** these of so many chances taken, in one order */
  const taking = (taken: number, of: number): number =>
    (takes[taken] ?? 0) + (leaves[of - taken] ?? 0) - (both[of] ?? 0);
  const staying = (chances: number): number => (stays[chances] ?? 0) - (all[chances] ?? 0);
  const stopping = (chances: number): number =>
    Math.log(gamma) + (stays[chances] ?? 0) - (all[chances + 1] ?? 0);
  const logOf = ({ taken, last, chances }: Taken): number => {
    const still = taking(taken, chances) + staying(chances);
    if (last === chances) return still;
    // or gone before any of the chances after the last visit: each such term is the one before times a ratio
    let term = 1;
    let sum = 0;
    for (let there = last; there < chances; there += 1) {
      sum += term;
      const left = (beta + there - taken) / (alpha + beta + there);
      term *= (left * (delta + there)) / (gamma + delta + there + 1);
    }
    return logOfSum(still, taking(taken, last) + stopping(last) + Math.log(sum));
  };
  return { taking, staying, logOf };
}

function mustBeTaken(seen: Taken): Taken {
  const { taken, last, chances } = seen;
  const whole = [taken, last, chances].every((it) => Number.isInteger(it) && it >= 0);
  const ordered = taken <= last && last <= chances && taken > 0 === last > 0;
  if (!whole || !ordered) throw new RangeError(`taken, last, chances: ${taken}, ${last}, ${chances}`);
  return seen;
}
