import { bandOf, type Fitted, type Moments } from "#kernels/survival";
import type { Banded, PersonComing } from "./coming-types.ts";
import { FOUR_OF_FIVE } from "./four-of-five.ts";

/** The figures of one person that come from the fit. */
export type PersonFigures = Pick<PersonComing, "stillComing" | "comesAgain" | "expectedVisits">;

/** What a model says of somebody who was seen so, with given parameters. */
export type ModelOf<Parameters, Seen> = {
  readonly named: (values: readonly number[]) => Parameters;
  /** the same for people who were seen alike */
  readonly keyOf: (seen: Seen) => string;
  /** false where the model has nothing to go by */
  readonly canStop: (seen: Seen) => boolean;
  readonly stillComing: (parameters: Parameters, seen: Seen) => number;
  readonly comesAgain: (parameters: Parameters, seen: Seen) => number;
  readonly visits: (parameters: Parameters, seen: Seen) => Moments;
};

export type Figures<Seen> = {
  readonly of: (seen: Seen) => PersonFigures;
  /** the visits of all of them together; its band is of what happens, by the fit and by chance */
  readonly total: (people: readonly Seen[]) => Banded;
};

/** Figures with their bands; people who were seen alike are worked out once. */
export function figuresOf<Parameters, Seen>(
  fitted: Fitted<readonly number[]>,
  model: ModelOf<Parameters, Seen>,
): Figures<Seen> {
  const figure = (kind: "share" | "amount", at: (parameters: Parameters) => number): Banded => ({
    value: at(model.named(fitted.parameters)),
    ...bandOf(fitted, (values) => at(model.named(values)), kind, FOUR_OF_FIVE),
  });
  const known = new Map<string, PersonFigures>();
  const of = (seen: Seen): PersonFigures => {
    const key = model.keyOf(seen);
    const found = known.get(key) ?? {
      stillComing: model.canStop(seen) ? figure("share", (it) => model.stillComing(it, seen)) : null,
      comesAgain: figure("share", (it) => model.comesAgain(it, seen)),
      expectedVisits: figure("amount", (it) => model.visits(it, seen).mean),
    };
    known.set(key, found);
    return found;
  };
  return { of, total: (people) => totalOf(people, fitted, model, figure) };
}

function totalOf<Parameters, Seen>(
  people: readonly Seen[],
  fitted: Fitted<readonly number[]>,
  model: ModelOf<Parameters, Seen>,
  figure: (kind: "amount", at: (parameters: Parameters) => number) => Banded,
): Banded {
  const groups = alikeOf(people, model.keyOf);
  const { value, low, high } = figure("amount", (it) =>
    groups.reduce((sum, { seen, count }) => sum + count * model.visits(it, seen).mean, 0),
  );
  const best = model.named(fitted.parameters);
  const byChance = groups.reduce(
    (sum, { seen, count }) => sum + count * model.visits(best, seen).variance,
    0,
  );
  const byFit = (high - low) / (2 * FOUR_OF_FIVE);
  // two independent reasons to be off: their variances add
  const half = FOUR_OF_FIVE * Math.sqrt(byChance + byFit ** 2);
  return { value, low: Math.max(0, value - half), high: value + half };
}

function alikeOf<Seen>(people: readonly Seen[], keyOf: (seen: Seen) => string) {
  const groups = new Map<string, { readonly seen: Seen; count: number }>();
  for (const seen of people) {
    const key = keyOf(seen);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { seen, count: 1 });
    else group.count += 1;
  }
  return [...groups.values()];
}
