import type { AmountWriter } from "../reply.ts";
import { coursesJson, monthlyJson } from "./courses-json.ts";
import type { PriceJson } from "./price-json.ts";
import type { PriceQuestion } from "./price-question.ts";
import type { PriceSums } from "./price-sums.ts";
import { risesJson } from "./rises-json.ts";
import { targetJson } from "./target-json.ts";

export type AskedParts = Pick<PriceJson, "courses" | "monthly" | "rises" | "target">;

/** What is answered when it is asked for: courses, a year by the month, rises, a target pay. */
export function askedParts(question: PriceQuestion, sums: PriceSums, write: AmountWriter): AskedParts {
  return {
    courses: coursesJson(question, write),
    monthly: monthlyJson(question, write),
    rises: risesJson(sums, question, write),
    target: targetJson(sums, question, write),
  };
}

/** Their sentences, in their order. */
export function saidOf({ courses, monthly, rises, target }: AskedParts): readonly string[] {
  const parts = [...courses, monthly, ...rises.flatMap(({ single, all }) => [single, all]), target];
  return parts.flatMap((it) => (it === null ? [] : [it.says]));
}
