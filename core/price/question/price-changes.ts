import { cappedCount, expectedMinimum, meanOfLowest } from "#kernels/statistics";
import { type Flip, whatWouldChange } from "../change/what-would-change.ts";
import { ladderYield } from "../ladder/ladder-checks.ts";
import { studioPay } from "../studio/studio-pay.ts";
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
  const studioPays = remembered(payOf);
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
    return heads * ladderYield(tiers).sub(perHead).valueOf() - cost;
  };
}

function remembered<Key, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const done = new Map<Key, Value>();
  return (key) => {
    const value = done.get(key) ?? work(key);
    done.set(key, value);
    return value;
  };
}

function payOf({ pay, demand, capacity }: NamedStudio): number {
  return meanOfLowest(cappedCount(demand, capacity), 1, (heads) => studioPay(pay, heads).valueOf());
}

function isOwnBetter(
  question: PriceQuestion,
  leaves: (question: PriceQuestion) => number,
  pays: (studio: NamedStudio) => number,
): boolean {
  const { studio, doorToDoor } = question;
  if (studio === null || doorToDoor === null) return true;
  return leaves(question) / doorToDoor >= (pays(studio) - studio.travelCost) / studio.minutes;
}
