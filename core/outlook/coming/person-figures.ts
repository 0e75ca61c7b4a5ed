import {
  type BgBb,
  type BgNbd,
  bandOf,
  chanceOfAnother,
  chanceOfTaking,
  chanceStillComing,
  chanceThereAt,
  expectedTaken,
  expectedVisits,
  type Fitted,
  type Repeats,
  type Taken,
} from "#kernels/survival";
import type { Banded, PersonComing } from "./coming-types.ts";
import { FOUR_OF_FIVE } from "./four-of-five.ts";

/** The figures of one person that come from the fit. */
export type PersonFigures = Pick<PersonComing, "stillComing" | "comesAgain" | "expectedVisits">;

/** Figures for people by what was seen of them; people alike are worked out once. */
export function bgNbdFigures(fitted: Fitted<BgNbd>, ahead: number): (seen: Repeats) => PersonFigures {
  const { r, alpha, a, b } = fitted.parameters;
  const figure = figureOf(
    { ...fitted, parameters: [r, alpha, a, b] },
    ([r = 1, alpha = 1, a = 1, b = 1]) => ({ r, alpha, a, b }),
  );
  return remembered(
    ({ repeats, last, span }) => `${repeats} ${last} ${span}`,
    (seen) => ({
      // by this model nobody can stop before a second visit: 1, whatever was seen, is no answer
      stillComing: seen.repeats === 0 ? null : figure("share", (it) => chanceStillComing(it, seen)),
      comesAgain: figure("share", (it) => chanceOfAnother(it, seen, ahead)),
      expectedVisits: figure("amount", (it) => expectedVisits(it, seen, ahead)),
    }),
  );
}

export function bgBbFigures(fitted: Fitted<BgBb>, ahead: number): (seen: Taken) => PersonFigures {
  const { alpha, beta, gamma, delta } = fitted.parameters;
  const figure = figureOf(
    { ...fitted, parameters: [alpha, beta, gamma, delta] },
    ([alpha = 1, beta = 1, gamma = 1, delta = 1]) => ({ alpha, beta, gamma, delta }),
  );
  return remembered(
    ({ taken, last, chances }) => `${taken} ${last} ${chances}`,
    (seen) => ({
      stillComing: figure("share", (it) => chanceThereAt(it, seen, 1)),
      comesAgain: figure("share", (it) => chanceOfTaking(it, seen, ahead)),
      expectedVisits: figure("amount", (it) => expectedTaken(it, seen, ahead)),
    }),
  );
}

function figureOf<Parameters>(
  fitted: Fitted<readonly number[]>,
  named: (parameters: readonly number[]) => Parameters,
) {
  return (kind: "share" | "amount", at: (parameters: Parameters) => number): Banded => {
    const value = at(named(fitted.parameters));
    return { value, ...bandOf(fitted, (it) => at(named(it)), kind, FOUR_OF_FIVE) };
  };
}

function remembered<Seen>(keyOf: (seen: Seen) => string, work: (seen: Seen) => PersonFigures) {
  const known = new Map<string, PersonFigures>();
  return (seen: Seen): PersonFigures => {
    const key = keyOf(seen);
    const found = known.get(key) ?? work(seen);
    known.set(key, found);
    return found;
  };
}
