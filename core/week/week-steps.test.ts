import { loadSolver, type Solver } from "#kernels/search";
import { plainAmount } from "#core/price";
import { drawing, randomWeek } from "#testing";
import { beforeAll, expect, it } from "vitest";
import { readWeek } from "./read-week.ts";
import { weekAnswer } from "./week-answer.ts";
import type { WeekDocument } from "./week-document.ts";
import { type WeekStep, weekSteps } from "./week-steps.ts";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

function stepsOf(document: WeekDocument, by: Solver = solver): readonly WeekStep[] {
  const week = readWeek(document);
  if (!week.ok) throw new Error(JSON.stringify(week.problems));
  return [...weekSteps(week.value, by, plainAmount)];
}

/** Seven candidates of three days in three places. */
function small(seed: number): WeekDocument {
  const week = randomWeek({ candidates: 7, places: 3, days: 3, draw: drawing(seed) });
  return { ...week, target: "1000.00", limits: { ...week.limits, classesAWeek: 3 } };
}

it("WEEK-18: says piece by piece what the whole answer says", () => {
  for (const seed of [1, 2, 3]) {
    const document = small(seed);
    const whole = weekAnswer(document, solver);
    if (!whole.ok) throw new Error(JSON.stringify(whole.problems));
    const { json } = whole.value;
    const steps = stepsOf(document);
    const last = steps.findLast((step) => step.kind === "week");
    expect(last).toMatchObject({
      sure: true,
      week: { earns: json.earns, leaves: json.leaves, days: json.days, ties: json.ties },
    });
    const kinds = steps.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === "chosen")).toHaveLength(json.chosen.length);
    const lines = steps.flatMap((step) => (step.kind === "rejected" ? [step.line] : []));
    expect(lines).toEqual(json.rejected);
    const curves = steps.flatMap((step) => (step.kind === "curve" ? [step.points] : []));
    expect(curves).toEqual([json.curve.classes, json.curve.evenings]);
    expect(steps.find((step) => step.kind === "target")).toMatchObject({ target: json.target });
  }
});

it("WEEK-18: shows a week that is not proven yet with its gap, and puts the proven one in its place", () => {
  // the solver is told to stop at once where a few nodes are asked for, as a hard week would make it
  const impatient: Solver = {
    solve: (programme, limits, start) => {
      const outcome = solver.solve(programme, limits, start);
      if ((limits?.nodes ?? 0) > 1000 || outcome.kind !== "best") return outcome;
      const { value, columns } = outcome;
      return { kind: "stopped", found: { value, columns }, bound: value + 500 };
    },
  };
  const weeks = stepsOf(small(4), impatient).flatMap((step) => (step.kind === "week" ? [step] : []));
  expect(weeks.map(({ sure, week }) => [sure, week.proven])).toEqual([
    [false, false],
    [false, false],
    [true, true],
  ]);
  expect(weeks[0]?.week.sentences.join(" ")).toMatch(
    /^The best week found so far earns .* may leave up to 5.00 GBP a year more.$/,
  );
});

it("WEEK-18: where no week is possible, tells why and nothing else", () => {
  const document = small(5);
  const [first, second] = document.candidates;
  if (first === undefined || second === undefined) throw new Error("seven candidates");
  // two promised on two days and six days free
  const candidates = [
    { ...first, weekday: 1, fixed: true },
    { ...second, weekday: 2, fixed: true },
  ];
  const steps = stepsOf({ ...document, candidates, limits: { ...document.limits, freeDays: 6 } });
  expect(steps).toMatchObject([{ kind: "none", problem: { code: "week-impossible" } }]);
});
