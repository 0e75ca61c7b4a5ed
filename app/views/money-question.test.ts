import { type MoneyPlan, moneyAnswer, moneyPlanSchema } from "#core/cash";
import { type ClassDocument, classDocumentSchema } from "#core/class";
import { hallDocumentSchema } from "#core/hall";
import { cedarFork, marlsford } from "#demo";
import { expect, test } from "vitest";
import { atMoneyPlan, moneyQuestion, type MoneyQuestionInput } from "./money-question.ts";

const tuesdays: ClassDocument = classDocumentSchema.parse({
  name: "Tuesday evening",
  hall: "barn",
  weekday: 2,
  start: "18:30",
  minutes: { setUp: 20, class: 60, packDown: 10, travel: 30, preparation: 0, admin: 0 },
  costs: { travel: "2.00", music: "0.50", cover: "0", other: "0.50", perHead: "0.20" },
  prices: { single: "10.00", passes: [{ classes: 10, price: "80.00" }] },
  mix: { single: 0.5, "pass-10": 0.5 },
  heads: 10,
  // ten Tuesdays
  year: { from: "2027-01-05", until: "2027-03-09", closures: [], fixedPerYear: "0" },
  guesses: [],
});

const barn = hallDocumentSchema.parse({
  name: "Barn",
  outline: [
    [0, 0],
    [8, 0],
    [8, 12],
    [0, 12],
  ],
  mat: { length: 1.8, width: 0.61 },
  gaps: { side: 0.5, end: 0.3, wall: 0.5 },
  hire: { perSession: "27.00" },
});

const whole: MoneyQuestionInput = {
  practice: { currency: "GBP", locale: "en-GB" },
  plan: moneyPlanSchema.parse({}),
  classes: [{ id: "tue", document: tuesdays }],
  halls: [{ id: "barn", document: barn }],
  today: "2027-01-14",
  money: (exact) => `£${(exact.valueOf() / 100).toFixed(2)}`,
};

function asked(plan: Partial<MoneyPlan> = {}, change: Partial<MoneyQuestionInput> = {}) {
  return moneyQuestion({ ...whole, plan: { ...whole.plan, ...plan }, ...change });
}

test("a class of the practice comes in with its dates, takings, hall, travel and the rest", () => {
  const { document, own } = asked();
  const [work] = document.work;
  expect(work?.dates).toHaveLength(10);
  // half at 10.00 and half at 80.00 ÷ 10: 9.00 a head, ten heads; music and other 1.00 and 0.20 a head
  expect(work).toMatchObject({
    perSession: "90.00",
    // 0.5 × 8.00 ÷ 9.00
    passes: { share: 0.444, sessions: 10, owed: "0" },
    costs: [
      { name: "hall", perSession: "27.00", paid: { when: "after-month", days: 14 } },
      { name: "travel", perSession: "2.00" },
      { name: "other", perSession: "3.00" },
    ],
  });
  expect(own[0]?.says).toBe(
    "10 sessions, the last on 9 March 2027; £90.00 taken at each, £27.00 for the hall",
  );
  expect(document.from).toBe("2027-01-01");
  expect(document.tax?.place).toBe("uk");
  expect(moneyAnswer(document)).toMatchObject({ ok: true });
});

test("a guessed number of people makes the takings a band, a quarter either way", () => {
  const { document } = asked({}, { classes: [{ id: "tue", document: { ...tuesdays, guesses: ["heads"] } }] });
  // 7 and 13 of 10 people at 9.00
  expect(document.work[0]?.perSession).toEqual({ low: "63.00", middle: "90.00", high: "117.00" });
  expect(document.guesses).toEqual(["own.tue.hallPaid", "own.tue.perSession"]);
});

test("what she says about a class stands before its class sheet, and one left out is not counted", () => {
  const said = { class: "tue", out: false, changes: [], perSession: "70.00" };
  expect(asked({ own: [said] }).document.work[0]?.perSession).toBe("70.00");
  expect(asked({ own: [{ ...said, out: true }] })).toMatchObject({ nothing: true });
});

test("a class without a hall is told with what to do", () => {
  const { own, nothing } = asked({}, { classes: [{ id: "tue", document: { ...tuesdays, hall: null } }] });
  expect(own[0]?.why).not.toBe("");
  expect(own[0]?.why).not.toBeNull();
  expect(nothing).toBe(true);
});

test("tax can be left out; a class that is gone, and a need that nobody gave, ask nothing of the path", () => {
  const { document } = asked({
    tax: null,
    path: {
      need: "500",
      level: 0.8,
      window: 3,
      together: 0.3,
      mayDrop: [{ id: "x", hours: 1, noticeWeeks: 4 }],
    },
  });
  expect(document.tax).toBeUndefined();
  expect(document.path?.mayDrop).toEqual([]);
  const without = { need: "0", level: 0.8, window: 3, together: 0.3, mayDrop: [] };
  expect(asked({ path: without }).document.path).toBeUndefined();
});

test("problems of the document stand at the ids of the plan", () => {
  const work = [{ id: "plum", kind: "studio" as const, dates: [], perSession: "1", changes: [], costs: [] }];
  const plan = { ...whole.plan, work };
  const { document } = asked(plan);
  const at = (place: string) =>
    atMoneyPlan([{ code: "x", place, says: "", next: "" }], plan, document)[0]?.place;
  expect(at("work[0].paid.days")).toBe("work.plum.paid.days");
  expect(at("work[1].perSession")).toBe("own.tue.perSession");
  expect(at("moves[0].amount")).toBe("moves[0].amount");
});

test.each([
  ["GBP", marlsford],
  ["USD", cedarFork],
])(
  "the money of the demo in %s is answered, from its plan and from its class sheets alone",
  (currency, demo) => {
    const { practice, classes, halls, plans } = demo;
    expect(practice.currency).toBe(currency);
    const kept = plans.find(({ id }) => id === "money")?.document;
    for (const document of [kept, {}]) {
      const plan = moneyPlanSchema.parse(document);
      const question = asked(plan, { practice, classes, halls, plan, today: "2026-09-07" });
      expect(question.own.map(({ why }) => why)).toEqual(question.own.map(() => null));
      const read = moneyAnswer(question.document);
      if (!read.ok) throw new Error(JSON.stringify(read.problems));
      expect(read.value.unused).toEqual([]);
      expect(read.value.json.tax?.years.length).toBeGreaterThan(0);
    }
  },
);
