import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type MoneyJson, moneyAnswer, type YearMoneyDocumentInput } from "../index.ts";
import type { PathQuestion } from "../money-types.ts";
import { planFaults } from "./check-plan.ts";
import { dropPlan } from "./drop-plan.ts";
import { isKept, pathChance, pathIncome } from "./path-chance.ts";
import type { PathMonth } from "./path-months.ts";
import { minor } from "#core/words";

type Path = NonNullable<YearMoneyDocumentInput["path"]>;

function answer(path: Path, given: Partial<YearMoneyDocumentInput> = {}): MoneyJson {
  const read = moneyAnswer({ currency: "GBP", from: "2027-01-01", months: 6, ...given, path });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.json;
}

type Amount = string | { readonly low: string; readonly middle: string; readonly high: string };

/** One session in the middle of each month, as `amounts` says. */
function monthly(id: string, kind: "own" | "studio", amounts: readonly Amount[]) {
  const dates = amounts.map((_, at) => `2027-${String(at + 1).padStart(2, "0")}-15`);
  return {
    id,
    kind,
    dates,
    perSession: "0",
    changes: dates.map((from, at) => ({ from, perSession: amounts[at] ?? "0" })),
  };
}

test("CASH-40: income is what sessions bring less their costs, other money in, and costs spread evenly", () => {
  const { path } = answer(
    { need: "100", mayDrop: [], window: 1 },
    {
      months: 2,
      work: [
        {
          id: "tue",
          kind: "own",
          dates: ["2027-01-05", "2027-01-12", "2027-02-02"],
          perSession: "80",
          costs: [{ name: "hall", perSession: "30" }],
        },
      ],
      moves: [
        { name: "insurance", way: "out", amount: "60", on: "2027-02-20" },
        { name: "job", way: "in", amount: "300", on: "2027-01-28", everyMonths: 1, business: false },
        { name: "living", way: "out", amount: "900", on: "2027-01-28", everyMonths: 1, business: false },
      ],
    },
  );
  // (2 × 50, 50) + 300 − 60 ÷ 2; what she lives on is the need, not a cost
  expect(path?.months.map((it) => it.middle)).toEqual(["370.00", "320.00"]);
});

test("CASH-40: a thin month is averaged with the two after it", () => {
  const { path } = answer(
    { need: "50", mayDrop: [] },
    { months: 3, work: [monthly("tue", "own", ["30", "60", "90"])] },
  );
  // (30 + 60 + 90) ÷ 3, (60 + 90) ÷ 2, 90
  expect(path?.months.map((it) => it.middle)).toEqual(["60.00", "75.00", "90.00"]);
});

test("CASH-41: a band of 80 to 120 about 100 is its own eight chances of ten", () => {
  const { path } = answer(
    { need: "80", mayDrop: [], window: 1 },
    { months: 1, work: [monthly("tue", "own", [{ low: "80", middle: "100", high: "120" }])] },
  );
  expect(path?.months[0]).toMatchObject({ low: "80.00", middle: "100.00", high: "120.00", chance: 0.9 });
});

test("CASH-41: two such classes apart vary by √2, together by 2", () => {
  const band = { low: "80", middle: "100", high: "120" };
  const low = (together: number) =>
    answer(
      { need: "80", mayDrop: [], window: 1, together },
      { months: 1, work: [monthly("tue", "own", [band]), monthly("thu", "own", [band])] },
    ).path?.months[0]?.low;
  expect(low(0)).toBe("171.72"); // 200 − 20 × √2
  expect(low(1)).toBe("160.00"); // 200 − 20 × 2
});

const growing = ["40", "60", "100", "140", "160", "200"];

test("CASH-42: a class can go once the others carry every month from then on", () => {
  const json = answer(
    {
      need: "150",
      window: 1,
      mayDrop: [
        { id: "plum", noticeWeeks: 0 },
        { id: "baths", noticeWeeks: 0 },
      ],
    },
    {
      work: [
        monthly("tue", "own", growing),
        monthly(
          "plum",
          "studio",
          Array.from({ length: 6 }, () => "80"),
        ),
        monthly(
          "baths",
          "studio",
          Array.from({ length: 6 }, () => "50"),
        ),
      ],
    },
  );
  // without Plum: own + 50 ≥ 150 from March (150); without Baths: own + 80 ≥ 150 from March (180), February is 140
  expect(json.path?.classes.map((it) => it.alone?.from)).toEqual(["2027-03-01", "2027-03-01"]);
});

function goneAfter(noticeWeeks: number) {
  return answer(
    { need: "100", window: 1, mayDrop: [{ id: "plum", noticeWeeks }] },
    {
      work: [
        monthly("tue", "own", ["100", "100", "100", "100"]),
        monthly("plum", "studio", ["80", "80", "80", "80"]),
      ],
      months: 4,
    },
  ).path?.classes[0]?.alone;
}

test("CASH-42: notice of four weeks from 1 January ends on 29 January: not before February", () => {
  expect(goneAfter(0)).toEqual({ from: "2027-01-01", noticeBy: "2027-01-01" });
  expect(goneAfter(4)).toEqual({ from: "2027-02-01", noticeBy: "2027-01-04" });
  expect(goneAfter(6)).toEqual({ from: "2027-03-01", noticeBy: "2027-01-18" });
});

test("CASH-43: of two classes of which one can go the one that takes more hours goes first", () => {
  const json = answer(
    {
      need: "150",
      window: 1,
      mayDrop: [
        { id: "plum", hours: 2, noticeWeeks: 0 },
        { id: "baths", hours: 3, noticeWeeks: 0 },
      ],
    },
    {
      work: [
        monthly("tue", "own", growing),
        monthly(
          "plum",
          "studio",
          Array.from({ length: 6 }, () => "60"),
        ),
        monthly(
          "baths",
          "studio",
          Array.from({ length: 6 }, () => "60"),
        ),
      ],
    },
  );
  // own + 60 ≥ 150 from March: Baths goes (3 h × 4 months = 12); own ≥ 150 from May: Plum goes (2 h × 2 = 4)
  expect(json.path?.classes.map((it) => it.planned?.from)).toEqual(["2027-05-01", "2027-03-01"]);
  expect(json.path?.freedHours).toBe(16);
  expect(json.sentences.join(" ")).toContain("From 2027-05-01 on the rest carries it without baths and plum");
});

test("CASH-43: letting the large one go later can free more than letting the small one go first", () => {
  // Without the long one 100 + 20 is short until April; without the short one 130 is enough from January. Short from
  // January (1 h × 6) bars the long one: together they leave 100. Long from April frees 5 h × 3 = 15, more than 6.
  const json = answer(
    {
      need: "120",
      window: 1,
      mayDrop: [
        { id: "short", hours: 1, noticeWeeks: 0 },
        { id: "long", hours: 5, noticeWeeks: 0 },
      ],
    },
    {
      work: [
        monthly("tue", "own", ["95", "95", "95", "100", "100", "100"]),
        monthly(
          "short",
          "studio",
          Array.from({ length: 6 }, () => "20"),
        ),
        monthly(
          "long",
          "studio",
          Array.from({ length: 6 }, () => "30"),
        ),
      ],
    },
  );
  expect(json.path?.classes.map((it) => it.planned?.from ?? null)).toEqual([null, "2027-04-01"]);
});

test("CASH-44: where not even all classes reach it none goes before; and never is said", () => {
  const work = [monthly("tue", "own", ["10", "200", "200"]), monthly("plum", "studio", ["20", "20", "20"])];
  const path = { need: "100", window: 1, mayDrop: [{ id: "plum", noticeWeeks: 0 }] };
  expect(answer(path, { work, months: 3 }).path?.classes[0]?.planned?.from).toBe("2027-02-01");
  const never = answer({ ...path, need: "500" }, { work, months: 3 });
  expect(never.path?.classes[0]).toMatchObject({ alone: null, planned: null });
  expect(never.says.path[0]).toContain("Within these months nothing can go");
});

function codes(asked: Path): readonly string[] {
  const work = [monthly("tue", "own", ["10"])];
  const read = moneyAnswer({ currency: "GBP", from: "2027-01-01", work, path: asked });
  return read.ok ? [] : read.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("CASH-9: a path that cannot be meant is told at its place", () => {
  expect(codes({ need: "0", mayDrop: [] })).toEqual(["path-need-nought at path.need"]);
  expect(codes({ need: "10", level: 1, window: 0, together: 2, mayDrop: [{ id: "no" }] })).toEqual([
    "path-level at path.level",
    "path-window at path.window",
    "path-together at path.together",
    "path-work-unknown at path.mayDrop[0].id",
  ]);
  expect(codes({ need: "10", mayDrop: [{ id: "tue" }, { id: "tue", noticeWeeks: 99 }] })).toEqual([
    "path-work-twice at path.mayDrop[1].id",
  ]);
});

const smallPath = fc
  .record({ classes: fc.integer({ min: 1, max: 3 }), months: fc.integer({ min: 1, max: 4 }) })
  .chain(({ classes, months }) =>
    fc.record({
      months: fc.array(
        fc.record({
          sure: fc.integer({ min: -50, max: 300 }),
          deviation: fc.integer({ min: 0, max: 60 }),
          droppable: fc.array(
            fc.record({
              coins: fc.integer({ min: -20, max: 120 }),
              sessions: fc.integer({ min: 0, max: 5 }),
            }),
            { minLength: classes, maxLength: classes },
          ),
        }),
        { minLength: months, maxLength: months },
      ),
      hours: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: classes, maxLength: classes }),
      earliest: fc.array(fc.integer({ min: 0, max: months }), { minLength: classes, maxLength: classes }),
      need: fc.integer({ min: 1, max: 300 }),
      window: fc.integer({ min: 1, max: 3 }),
      level: fc.constantFrom(0.5, 0.8, 0.95),
    }),
  );

test("CASH-43: trying every month for every class to go finds the same hours and the same money", () => {
  fc.assert(
    fc.property(smallPath, (drawn) => {
      const months: readonly PathMonth[] = drawn.months.map(({ sure, deviation, droppable }, at) => ({
        month: `m${at}`,
        first: `m${at}`,
        sure,
        deviations: [deviation],
        droppable,
      }));
      const question: PathQuestion = {
        need: minor(drawn.need),
        level: drawn.level,
        window: drawn.window,
        together: 0.3,
        mayDrop: drawn.hours.map((hours, work) => ({ work, hours, noticeWeeks: 0 })),
      };
      const { kept } = dropPlan(months, question, drawn.earliest);
      expect(planFaults(months, question, drawn.earliest, kept)).toEqual([]);
      expect(worthOf(months, question, kept)).toEqual(bestOfAll(months, question, drawn.earliest));
    }),
    { numRuns: 300 },
  );
});

function worthOf(months: readonly PathMonth[], question: PathQuestion, kept: readonly number[]) {
  let hours = 0;
  let coins = 0;
  for (const [at, month] of months.entries())
    for (const [one, { coins: brings, sessions }] of month.droppable.entries()) {
      if (isKept(kept[at] ?? 0, one)) coins += brings;
      else hours += (question.mayDrop[one]?.hours ?? 0) * sessions;
    }
  return { hours, coins };
}

/** Every class goes in some month or never: (months + 1) ^ classes choices, each looked at by itself. */
function bestOfAll(months: readonly PathMonth[], question: PathQuestion, earliest: readonly number[]) {
  const classes = question.mayDrop.length;
  const all = 2 ** classes - 1;
  let best = { hours: -1, coins: 0 };
  for (let code = 0; code < (months.length + 1) ** classes; code += 1) {
    const goes = Array.from(
      { length: classes },
      (_, one) => Math.floor(code / (months.length + 1) ** one) % (months.length + 1),
    );
    const kept = months.map((_, at) =>
      goes.reduce((set, from, one) => (at < from ? set | (1 << one) : set), 0),
    );
    const sound = kept.every(
      (set, at) =>
        (set === all || pathChance(pathIncome(months, at, set, question), question.need) >= question.level) &&
        goes.every((from, one) => from > at || at >= (earliest[one] ?? 0)),
    );
    const worth = worthOf(months, question, kept);
    if (sound && (worth.hours > best.hours || (worth.hours === best.hours && worth.coins > best.coins)))
      best = worth;
  }
  return best;
}

test("CASH-43: the checker tells a class that comes back, a month too thin and notice not kept", () => {
  const month: PathMonth = {
    month: "m",
    first: "m",
    sure: 0,
    deviations: [],
    droppable: [{ coins: 100, sessions: 1 }],
  };
  const question: PathQuestion = {
    need: minor(50),
    level: 0.8,
    window: 1,
    together: 0,
    mayDrop: [{ work: 0, hours: 1, noticeWeeks: 0 }],
  };
  expect(planFaults([month, month], question, [1], [0, 1])).toEqual([
    "month 0: chance 0",
    "month 0: class 0 goes before its notice",
    "month 1: a class that went comes back",
  ]);
});
