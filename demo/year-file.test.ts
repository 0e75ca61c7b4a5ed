import { readFileSync } from "node:fs";
import { join } from "node:path";
import { yearPlanOf, yearQuestion } from "#app/views";
import { yearAnswer, yearDocumentSchema } from "#core/year";
import { expect, it } from "vitest";
import { marlsford } from "./marlsford.ts";

const file = join(import.meta.dirname, "files", "oriels-year.json");

it("has a year as the screens ask it of the demo, and it is answered with nothing that nobody reads", () => {
  const plan = yearPlanOf(marlsford.plans.find(({ id }) => id === "year")?.document, marlsford.practice);
  const asked = yearQuestion({ ...marlsford, plan, today: "2026-11-25" });
  const { calendar } = JSON.parse(readFileSync(file, "utf8"));
  expect(yearDocumentSchema.parse(calendar)).toEqual(yearDocumentSchema.parse(asked.document));
  const read = yearAnswer(calendar);
  expect(read).toMatchObject({ ok: true, value: { unused: [] } });
  expect(read.ok && read.value.json.classes).toHaveLength(4);
});
