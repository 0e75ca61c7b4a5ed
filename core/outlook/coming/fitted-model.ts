import {
  type BgBb,
  type BgNbd,
  chanceOfAnother,
  chanceOfTaking,
  chanceStillComing,
  chanceThereAt,
  expectedRepeats,
  expectedTaken,
  fitBgBb,
  fitBgNbd,
  type Repeats,
  type Taken,
  takenMoments,
  visitMoments,
} from "#kernels/survival";
import type { Banded, ComingFit, PersonSeen } from "./coming-types.ts";
import { figuresOf, type ModelOf, type PersonFigures } from "./person-figures.ts";
import type { RecordsRead } from "./read-records.ts";

export type FittedModel = {
  readonly fit: ComingFit;
  readonly figuresOf: (person: PersonSeen) => PersonFigures;
  readonly total: Banded;
  /** visits after the first to expect of somebody new */
  readonly ofNew: number;
};

/** The model fitted to everybody; null where nobody had a chance to come again yet. */
export function fittedModel(read: RecordsRead, model: ComingFit["model"], ahead: number): FittedModel | null {
  return model === "bg-nbd" ? atAnyTime(read, ahead) : weekByWeek(read, ahead);
}

function atAnyTime(read: RecordsRead, ahead: number): FittedModel {
  const people = read.people.map((person) => repeatsOf(read, person));
  const fitted = fitBgNbd(people);
  const { r, alpha, a, b } = fitted.parameters;
  const figures = figuresOf({ ...fitted, parameters: [r, alpha, a, b] }, bgNbdFor(ahead));
  return {
    fit: { model: "bg-nbd", fitted },
    figuresOf: (person) => figures.of(repeatsOf(read, person)),
    total: figures.total(people),
    ofNew: expectedRepeats(fitted.parameters, ahead),
  };
}

function weekByWeek(read: RecordsRead, ahead: number): FittedModel | null {
  const people = read.people.map((person) => takenOf(read, person));
  if (people.every(({ chances }) => chances === 0)) return null;
  const fitted = fitBgBb(people);
  const { alpha, beta, gamma, delta } = fitted.parameters;
  const figures = figuresOf({ ...fitted, parameters: [alpha, beta, gamma, delta] }, bgBbFor(ahead));
  return {
    fit: { model: "bg-bb", fitted },
    figuresOf: (person) => figures.of(takenOf(read, person)),
    total: figures.total(people),
    ofNew: expectedTaken(fitted.parameters, { taken: 0, last: 0, chances: 0 }, ahead),
  };
}

function bgNbdFor(ahead: number): ModelOf<BgNbd, Repeats> {
  return {
    named: ([r = 1, alpha = 1, a = 1, b = 1]) => ({ r, alpha, a, b }),
    keyOf: ({ repeats, last, span }) => `${repeats} ${last} ${span}`,
    // by this model nobody can stop before a second visit: 1, whatever was seen, is no answer
    canStop: ({ repeats }) => repeats > 0,
    stillComing: chanceStillComing,
    comesAgain: (parameters, seen) => chanceOfAnother(parameters, seen, ahead),
    visits: (parameters, seen) => visitMoments(parameters, seen, ahead),
  };
}

function bgBbFor(ahead: number): ModelOf<BgBb, Taken> {
  return {
    named: ([alpha = 1, beta = 1, gamma = 1, delta = 1]) => ({ alpha, beta, gamma, delta }),
    keyOf: ({ taken, last, chances }) => `${taken} ${last} ${chances}`,
    canStop: () => true,
    stillComing: (parameters, seen) => chanceThereAt(parameters, seen, 1),
    comesAgain: (parameters, seen) => chanceOfTaking(parameters, seen, ahead),
    visits: (parameters, seen) => takenMoments(parameters, seen, ahead),
  };
}

/** Days after the first on which the person came, in teaching weeks since the first. */
function repeatsOf({ time, until }: RecordsRead, { days }: PersonSeen): Repeats {
  const first = time.at(days[0] ?? until);
  return {
    repeats: days.length - 1,
    last: time.at(days.at(-1) ?? until) - first,
    span: time.at(until) - first,
  };
}

/** Weeks after that of the first visit, each one chance to come. */
function takenOf({ time, lastWeek }: RecordsRead, { days }: PersonSeen): Taken {
  const [first = 0, ...later] = [...new Set(days.map(time.weekOf))];
  return {
    taken: later.length,
    last: (later.at(-1) ?? first) - first,
    chances: Math.max(0, lastWeek - first),
  };
}
