import { marlsford } from "#demo";
import { expect, test } from "vitest";
import { checkPlan } from "./check-plan.ts";

const kept = marlsford.plans.find(({ id }) => id === "money")?.document;

test("the money of the demo is kept as it is", () => {
  expect(checkPlan("money", kept)).toEqual({ ok: true, value: { value: kept, unused: [] } });
});

test("an empty plan of money is sound, and one of another kind is refused at its place", () => {
  expect(checkPlan("money", {})).toMatchObject({ ok: true });
  const read = checkPlan("money", { ...kept, work: [{ id: "plum", kind: "studio" }] });
  expect(read.ok ? [] : read.problems.map(({ code, place }) => `${code} at ${place}`)).toEqual([
    "document-missing at work[0].perSession",
  ]);
});

test("figures that cannot be meant are kept too: the page tells them beside their boxes", () => {
  expect(checkPlan("money", { months: 99, opening: "-20.00" })).toMatchObject({ ok: true });
});
