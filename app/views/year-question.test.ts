import { yearAnswer, yearPlanSchema } from "#core/year";
import { cedarFork, marlsford } from "#demo";
import { describe, expect, test } from "vitest";
import { type YearQuestionInput, yearPlanOf, yearQuestion } from "./year-question.ts";

const today = "2026-11-25";
const fresh = yearPlanSchema.parse({});

describe.each([
  ["Marlsford", marlsford],
  ["Cedar Fork", cedarFork],
])("the year of %s", (_, demo) => {
  const input: YearQuestionInput = { ...demo, plan: fresh, today };

  test("is sound from the class sheets alone, and each class is there without its closures", () => {
    const { document, leftOut } = yearQuestion(input);
    const read = yearAnswer(document);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(leftOut).toEqual([]);
    expect(read.value.json.classes.map(({ id }) => id)).toEqual(demo.classes.map(({ id }) => id));
    for (const it of read.value.json.classes) {
      expect(it.sessions).toBeGreaterThan(20);
      expect(it.sessions).toBeLessThan(47);
    }
  });

  test("is in the country of the practice until another is chosen", () => {
    const { locale } = demo.practice;
    expect(yearPlanOf({}, demo.practice).holidays.region).toBe(locale === "en-US" ? "US" : "GB-ENG");
    const chosen = { holidays: { region: "none" } };
    expect(yearPlanOf(chosen, demo.practice).holidays.region).toBe("none");
  });
});

const first = marlsford.classes[0];
if (first === undefined) throw new Error("the demo has a class");

test("a class whose day cannot be used is left out with why, and the others are there", () => {
  const broken = { id: "broken", document: { ...first.document, name: "Broken", weekday: 0 } };
  const { document, leftOut } = yearQuestion({ ...marlsford, classes: [broken, first], plan: fresh, today });
  expect(document.classes.map(({ id }) => id)).toEqual([first.id]);
  expect(leftOut).toEqual([
    {
      id: "broken",
      name: "Broken",
      why: "its day, its time or its dates cannot be used yet: look at its class sheet.",
    },
  ]);
});

test("what the plan says of classes and halls that are gone is passed over", () => {
  const plan = yearPlanSchema.parse({
    changes: [{ kind: "cancel", class: "gone", date: "2027-01-12" }],
    runs: [{ class: "gone" }],
    halls: [{ id: "gone", polling: true }],
  });
  const { document } = yearQuestion({ ...marlsford, plan, today });
  expect([document.changes, document.runs, document.halls?.some(({ id }) => id === "gone")]).toEqual([
    [],
    [],
    false,
  ]);
});

test("a class without a hall, or in one that is gone, still has its year", () => {
  const homeless = { ...first, document: { ...first.document, hall: null } };
  const lost = { id: "lost", document: { ...first.document, hall: "burnt-down" } };
  const { document } = yearQuestion({ ...marlsford, classes: [homeless, lost], plan: fresh, today });
  const read = yearAnswer(document);
  expect(read.ok && read.value.json.classes.map(({ hallName }) => hallName)).toEqual([
    "no hall yet",
    "a hall that is gone",
  ]);
});

test("without a class it is a year from today, and what she states of its span stands", () => {
  const none = { ...marlsford, classes: [], today };
  expect(yearQuestion({ ...none, plan: fresh }).document).toMatchObject({ from: today, until: "2027-11-24" });
  const stated = yearPlanSchema.parse({ from: "2027-01-01", until: "2027-12-31" });
  expect(yearQuestion({ ...none, plan: stated }).document).toMatchObject({
    from: "2027-01-01",
    until: "2027-12-31",
  });
});
