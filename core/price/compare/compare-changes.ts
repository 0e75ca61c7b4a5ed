import { type Dial, type Flip, whatWouldChange } from "../change/what-would-change.ts";
import { isGuess } from "../change/change-json.ts";
import type { CountModel } from "#kernels/statistics";
import type { Candidate, ComparedHall, Comparison } from "./compare-types.ts";
import { hallLine, type Measure, ordered } from "./hall-lines.ts";

/** What would have to be otherwise for another hall to lead by the measure, with the people expected. */
export function compareChanges(
  comparison: Comparison,
  candidates: readonly Candidate[],
  measure: Measure,
  guesses: readonly string[],
): readonly Flip<string>[] {
  const turns = turnsOf(comparison, candidates, guesses);
  return whatWouldChange(
    turns.map(({ dial }) => dial),
    (dial, value) => {
      const turn = turns.find((it) => it.dial === dial);
      const {
        demand,
        margin,
        candidates: turned,
      } = turn === undefined ? plain(comparison, candidates) : turn.turned(value);
      return leader(turned, demand, margin, measure);
    },
  );
}

type Turned = {
  readonly demand: CountModel;
  readonly margin: number;
  readonly candidates: readonly Candidate[];
};
type Turn = { readonly dial: Dial; readonly turned: (value: number) => Turned };

function plain(comparison: Comparison, candidates: readonly Candidate[]): Turned {
  return { demand: comparison.demand, margin: comparison.margin.valueOf(), candidates };
}

function leader(
  candidates: readonly Candidate[],
  demand: CountModel,
  margin: number,
  measure: Measure,
): string {
  const lines = candidates.map((candidate) => hallLine(candidate, demand, margin));
  return ordered(lines, "expected", measure)[0]?.candidate.said ?? "";
}

function turnsOf(
  comparison: Comparison,
  candidates: readonly Candidate[],
  guesses: readonly string[],
): readonly Turn[] {
  const now = plain(comparison, candidates);
  const { demand, margin } = now;
  const shared: readonly Turn[] = [
    {
      dial: dialOf(
        "heads",
        "the people who would like to come",
        "people",
        demand.mean,
        0.1,
        [0, 200],
        guesses,
      ),
      turned: (value) => ({ ...now, demand: { ...demand, mean: value } }),
    },
    {
      dial: dialOf(
        "prices",
        "what one person leaves",
        "money",
        Math.round(margin),
        1,
        [0, Math.round(margin) * 10 + 100],
        guesses,
      ),
      turned: (value) => ({ ...now, margin: value }),
    },
  ];
  return [...shared, ...comparison.halls.flatMap((hall, index) => hallTurns(hall, index, now, guesses))];
}

/** A change of one hall changes it at each time of the week. */
function hallTurns(
  { name, travelMinutes: travel, ways }: ComparedHall,
  index: number,
  now: Turned,
  guesses: readonly string[],
): readonly Turn[] {
  const [own] = now.candidates.filter(({ hall }) => hall === index);
  if (own === undefined) return [];
  const changed = (change: (candidate: Candidate) => Candidate): Turned => ({
    ...now,
    candidates: now.candidates.map((it) => (it.hall === index ? change(it) : it)),
  });
  const cost = Math.round(own.yearCost / own.sessions);
  const at = (field: string): string => `halls[${index}].${field}`;
  return [
    {
      dial: dialOf(
        at("hire"),
        `what a session in ${name} costs`,
        "money",
        cost,
        1,
        [0, cost * 10 + 100],
        guesses,
      ),
      turned: (value) => changed((it) => ({ ...it, yearCost: it.yearCost + it.sessions * (value - cost) })),
    },
    ...ways.map(
      (way, order): Turn => ({
        dial: dialOf(
          order === 0 ? at("capacity") : at(`arrangements[${order - 1}].capacity`),
          ways.length === 1 ? `the places in ${name}` : `the places in ${name} (${way.name ?? ""})`,
          "people",
          way.capacity,
          1,
          [1, 200],
          guesses,
        ),
        turned: (value) => changed((it) => (it.way === way.name ? { ...it, capacity: value } : it)),
      }),
    ),
    {
      dial: dialOf(
        at("travelMinutes"),
        `the travel to ${name} and back`,
        "minutes",
        travel,
        1,
        [0, 480],
        guesses,
      ),
      turned: (value) => changed((it) => ({ ...it, doorToDoor: it.doorToDoor - travel + value })),
    },
    {
      dial: dialOf(
        at("closures"),
        `the sessions a year in ${name}`,
        "plain",
        own.sessions,
        1,
        [1, 366],
        guesses,
      ),
      turned: (value) =>
        changed((it) => ({ ...it, sessions: value, yearCost: (it.yearCost / it.sessions) * value })),
    },
  ];
}

function dialOf(
  path: string,
  name: string,
  unit: Dial["unit"],
  now: number,
  step: number,
  [least, most]: readonly [number, number],
  guesses: readonly string[],
): Dial {
  return { path, name, unit, now, step, least, most: Math.max(most, now), guess: isGuess(guesses, path) };
}
