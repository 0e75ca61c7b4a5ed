import { minor } from "#core/words";
import type { CountModel } from "#kernels/statistics";
import { Fraction } from "fraction.js";
import { isGuess } from "../change/change-json.ts";
import type { Dial } from "../change/what-would-change.ts";
import type { Tier } from "../ladder/tier.ts";
import { payerInWords } from "../payer-key.ts";
import type { NamedStudio, PriceQuestion } from "./price-question.ts";

/** One figure, and the question with another value of it. */
export type Turn = { readonly dial: Dial; readonly turned: (value: number) => PriceQuestion };

/** The figures that an evening rests on. */
export function eveningTurns(question: PriceQuestion, guesses: readonly string[]): readonly Turn[] {
  const { cost, perHead, demand, capacity, tiers } = question;
  const paid = tiers.filter(({ share, kind }) => share.gt(0) && kind !== "free");
  const dial = dialsOf(guesses);
  return [
    {
      dial: dial("heads", "the people who would like to come", "people", demand.mean, 0.1, [0, 200]),
      turned: (value) => ({ ...question, demand: { ...demand, mean: value } }),
    },
    {
      dial: dial("capacity", "the places", "people", capacity, 1, [1, 200]),
      turned: (value) => ({ ...question, capacity: value }),
    },
    {
      dial: dial("cost", "what an evening costs", "money", cost, 1, [0, most(cost)]),
      turned: (value) => ({ ...question, cost: minor(value) }),
    },
    {
      dial: dial("perHead", "what each person costs", "money", perHead, 1, [0, most(cost)]),
      turned: (value) => ({ ...question, perHead: minor(value) }),
    },
    ...dispersionTurn(question, demand, dial),
    ...paid.map(
      (tier): Turn => ({
        dial: dial(
          tier.place,
          tier.kind === "single" ? "the single price" : `the price of ${payerInWords(tier.key)}`,
          "money",
          tier.price,
          1,
          [0, most(tier.price)],
        ),
        turned: (value) => ({
          ...question,
          tiers: tiers.map((it) => (it === tier ? priced(tier, value) : it)),
        }),
      }),
    ),
  ];
}

type DialOf = (
  path: string,
  name: string,
  unit: Dial["unit"],
  now: number,
  step: number,
  bounds: readonly [number, number],
) => Dial;

function dialsOf(guesses: readonly string[]): DialOf {
  return (path, name, unit, now, step, [least, most]) => {
    return {
      path,
      name,
      unit,
      now,
      step,
      least: Math.min(least, now),
      most: Math.max(most, now),
      guess: isGuess(guesses, path),
    };
  };
}

function dispersionTurn(question: PriceQuestion, demand: CountModel, dial: DialOf): readonly Turn[] {
  if (demand.kind === "steady") return [];
  const now = demand.kind === "varied" ? demand.dispersion : 1;
  return [
    {
      dial: dial("dispersion", "how unevenly people come", "plain", now, 0.1, [1, 20]),
      turned: (value) => ({ ...question, demand: { kind: "varied", mean: demand.mean, dispersion: value } }),
    },
  ];
}

function priced(tier: Tier, price: number): Tier {
  return { ...tier, price: minor(price), perClass: new Fraction(price).div(tier.classes) };
}

/** The figures that only her own hours and the studio rest on. */
export function studioTurns(
  question: PriceQuestion,
  studio: NamedStudio,
  doorToDoor: number,
  guesses: readonly string[],
): readonly Turn[] {
  const dial = dialsOf(guesses);
  const other = (change: Partial<NamedStudio>): PriceQuestion => ({
    ...question,
    studio: { ...studio, ...change },
  });
  const { pay, demand, minutes, travelCost } = studio;
  return [
    {
      dial: dial(
        "doorToDoorMinutes",
        "the time for your own class from door to door",
        "minutes",
        doorToDoor,
        1,
        [1, 1440],
      ),
      turned: (value) => ({ ...question, doorToDoor: value }),
    },
    {
      dial: dial(
        "studio.minutes",
        "the time for the studio’s class from door to door",
        "minutes",
        minutes,
        1,
        [1, 1440],
      ),
      turned: (value) => other({ minutes: value }),
    },
    {
      dial: dial("studio.travelCost", "the travel to the studio", "money", travelCost, 1, [
        0,
        most(travelCost),
      ]),
      turned: (value) => other({ travelCost: minor(value) }),
    },
    ...(pay.form === "flat"
      ? [
          {
            dial: dial("studio.pay.pay", "the studio’s pay", "money", pay.pay, 1, [0, most(pay.pay)]),
            turned: (value: number) => other({ pay: { form: "flat", pay: minor(value) } }),
          },
        ]
      : [
          {
            dial: dial(
              "studio.heads",
              "the people in the studio’s class",
              "people",
              demand.mean,
              0.1,
              [0, 200],
            ),
            turned: (value: number) => other({ demand: { ...demand, mean: value } }),
          },
        ]),
  ];
}

/** Ten times as much, and something where it is nought: beyond that a figure is another matter. */
function most(amount: number): number {
  return amount * 10 + 100;
}
