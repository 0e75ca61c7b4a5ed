import { loadSolver, type Solver } from "#kernels/search";
import "#testing";
import * as fc from "fast-check";
import { beforeAll, expect, it } from "vitest";
import { weekAnswer } from "./week-answer.ts";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const oddNumber = fc.oneof(fc.integer({ min: -3, max: 60 }), fc.constantFrom(0.5, 1e9, -1e9, 1440, 2 ** 53));
const money = (odd: readonly string[]) => fc.constantFrom(...odd);
const known = fc.constantFrom("home", "barn", "yard");
/** mostly what can be meant, so that about every fourth document is a week */
const mostly = <Value>(good: fc.Arbitrary<Value>, bad: fc.Arbitrary<Value>) =>
  fc.oneof({ weight: 19, arbitrary: good }, { weight: 1, arbitrary: bad });

const candidate = fc.record({
  kind: fc.constantFrom("own", "gym"),
  place: mostly(known, fc.constant("nowhere")),
  weekday: mostly(fc.integer({ min: 1, max: 7 }), oddNumber),
  start: mostly(
    fc.constantFrom("09:30", "11:00", "18:30", "19:00"),
    fc.constantFrom("00:00", "23:59", "24:00", "9:30", ""),
  ),
  minutes: fc.record({ before: fc.constantFrom(0, 10), teach: mostly(fc.constant(60), oddNumber) }),
  contribution: mostly(
    money(["30.00", "0", "-12.50"]),
    money(["1e3", "9999999999.99", "", "7.001", "12,50"]),
  ),
  sessions: mostly(fc.integer({ min: 1, max: 53 }), oddNumber),
  fixed: fc.boolean(),
});
const complete = [
  { from: "home", to: "barn", minutes: 20, km: 14 },
  { from: "home", to: "yard", minutes: 12, km: 6 },
  { from: "barn", to: "yard", minutes: 22, km: 16 },
];
const odd = fc.record({
  currency: mostly(fc.constantFrom("GBP", "JPY"), fc.constant("QQQ")),
  home: mostly(known, fc.constant("nowhere")),
  places: fc.constant([{ id: "home" }, { id: "barn" }, { id: "yard", at: { latitude: 51, longitude: -2 } }]),
  travel: mostly(fc.constant(complete), fc.constant(complete.slice(1))),
  candidates: fc
    .array(candidate, { maxLength: 4 })
    .map((all) => all.map((it, at) => ({ id: `class ${at}`, ...it }))),
  limits: fc.record(
    {
      classesAWeek: mostly(fc.integer({ min: 1, max: 5 }), oddNumber),
      freeDays: mostly(fc.integer({ min: 0, max: 6 }), oddNumber),
      restHours: mostly(fc.integer({ min: 0, max: 23 }), oddNumber),
      backToBack: mostly(fc.integer({ min: 1, max: 3 }), oddNumber),
    },
    { requiredKeys: [] },
  ),
});

it("WEEK-3: anything that looks like a week is answered, or told in problems with a place and a next step", () => {
  let answered = 0;
  fc.assert(
    fc.property(odd, (document) => {
      const read = weekAnswer(document, solver);
      if (read.ok) {
        answered++;
        expect(JSON.stringify(read.value.json)).not.toMatch(/NaN|undefined|Infinity/);
      } else
        for (const { says, next } of read.problems) {
          expect(says).toMatch(/\.$/);
          expect(next).toMatch(/[.?]$/);
        }
    }),
    { numRuns: 300 },
  );
  expect(answered).toBeGreaterThan(40);
  expect(answered).toBeLessThan(260);
});
