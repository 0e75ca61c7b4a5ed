import { type PlanDocument, type PlanId, planIds } from "#app/ports";
import { moneyPlanSchema } from "#core/cash";
import { weekPlanSchema } from "#core/week";
import { yearPlanSchema } from "#core/year";
import { bad, problem, type ReadDocument, readDocument, type Result } from "#core/words";

type Reader = (input: unknown) => Result<ReadDocument<PlanDocument>>;

/** Letters of its JSON: far above any plan, and below what the server takes at once. */
const MOST_LETTERS = 900_000;

/** Who reads each plan. */
const readers: Readonly<Record<PlanId, Reader>> = {
  // figures that are still wrong are kept too: they are told where the week is answered
  week: (input) => readDocument(weekPlanSchema, input),
  year: (input) => readDocument(yearPlanSchema, input),
  money: (input) => readDocument(moneyPlanSchema, input),
};

/** A plan that its reader can read. Problems: "plan-unknown", "plan-too-large", those of readDocument. */
export function checkPlan(id: string, input: unknown): Result<ReadDocument<PlanDocument>> {
  const known = planIds.find((it) => it === id);
  if (known === undefined) return bad(unknown(id));
  if ((JSON.stringify(input) ?? "").length > MOST_LETTERS) return bad(tooLarge(id));
  return readers[known](input);
}

function unknown(id: string) {
  const says = `“${id.slice(0, 40)}” is no plan that a practice has.`;
  return problem("plan-unknown", "id", says, `Give one of ${planIds.join(", ")}.`);
}

function tooLarge(id: string) {
  const says = `The plan of the ${id} is larger than anything that can be meant.`;
  return problem("plan-too-large", "", says, "Take rows out of it, then save again.");
}
