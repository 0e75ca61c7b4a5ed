import { cappedCount, expectedMinimum } from "#kernels/statistics";
import { type Flip, whatWouldChange } from "../change/what-would-change.ts";
import { ladderYield } from "../ladder/ladder-checks.ts";
import { type StudioPay, studioPay } from "../studio/studio-pay.ts";
import type { NamedStudio, PriceQuestion } from "./price-question.ts";
import { eveningTurns, studioTurns, type Turn } from "./price-turns.ts";

/** What would have to be otherwise for an evening not to pay on average, or to begin to. */
export function eveningChanges(
  question: PriceQuestion,
  guesses: readonly string[],
): readonly Flip<boolean>[] {
  const leaves = leavesOf();
  return changes(eveningTurns(question, guesses), (it) => leaves(it) >= 0);
}

/** What would have to be otherwise for the studio to earn more an hour than her own class, or the other way. */
export function studioChanges(
  question: PriceQuestion,
  studio: NamedStudio,
  doorToDoor: number,
  guesses: readonly string[],
): readonly Flip<boolean>[] {
  const turns = [...eveningTurns(question, guesses), ...studioTurns(question, studio, doorToDoor, guesses)];
  const leaves = leavesOf();
  const studioPays = meanPayOf();
  return changes(turns, (it) => isOwnBetter(it, leaves, studioPays));
}

function changes(
  turns: readonly Turn[],
  decide: (question: PriceQuestion) => boolean,
): readonly Flip<boolean>[] {
  return whatWouldChange(
    turns.map(({ dial }) => dial),
    (dial, value) => {
      const turn = turns.find((it) => it.dial === dial);
      if (turn === undefined) throw new RangeError(`no such dial: ${dial.path}`);
      return decide(turn.turned(value));
    },
  );
}

/** E[min(D, K)] × (y − v) − C; most dials leave the people as they are, so their mean is worked out once. */
function leavesOf(): (question: PriceQuestion) => number {
  const means = new Map<string, number>();
  return ({ tiers, perHead, demand, capacity, cost }) => {
    const key = JSON.stringify([demand, capacity]);
    const heads = means.get(key) ?? expectedMinimum(demand, capacity);
    means.set(key, heads);
    return toMillionth(heads * ladderYield(tiers).sub(perHead).valueOf() - cost);
  };
}

/** The studio's pay on average. Its exact pay for each number of people is worked out once for each way to pay. */
function meanPayOf(): (studio: NamedStudio) => number {
  const tables = new Map<StudioPay, readonly number[]>();
  return ({ pay, demand, capacity }) => {
    const table =
      tables.get(pay) ?? Array.from({ length: capacity + 1 }, (_, heads) => studioPay(pay, heads).valueOf());
    tables.set(pay, table);
    return cappedCount(demand, capacity).reduce(
      (sum, chance, heads) => sum + chance * (table[heads] ?? 0),
      0,
    );
  };
}

function isOwnBetter(
  question: PriceQuestion,
  leaves: (question: PriceQuestion) => number,
  pays: (studio: NamedStudio) => number,
): boolean {
  const { studio, doorToDoor } = question;
  if (studio === null || doorToDoor === null) return true;
  const [own, theirs] = [leaves(question), toMillionth(pays(studio) - studio.travelCost)];
  return own * studio.minutes >= theirs * doorToDoor;
}

/** Chances add to 1 but for the last digit; a millionth of a coin is dropped so that a tie stays a tie. */
function toMillionth(amount: number): number {
  return Math.round(amount * 1e6) / 1e6;
}
