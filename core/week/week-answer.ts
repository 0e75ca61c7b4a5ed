import { type AmountWriter, plainAmount, type Reply, withoutNoise } from "#core/price";
import { good, readDocument, type Result } from "#core/words";
import type { Limits, Solver } from "#kernels/search";
import { readWeek } from "./read-week.ts";
import { weekDocumentSchema } from "./week-document.ts";
import { weekFound } from "./week-found.ts";
import { type WeekJson, weekJson } from "./week-json.ts";

/**
 * Reads a week document and answers the best week, what each chosen class does and each rejected one lacks, the
 * trade-off curves and the lightest week for the target. `limits` bounds the search in nodes. Problems: those of the
 * document, "week-impossible", "week-not-found".
 */
export function weekAnswer(
  input: unknown,
  solver: Solver,
  write: AmountWriter = plainAmount,
  limits?: Limits,
): Result<Reply<WeekJson>> {
  const read = readDocument(weekDocumentSchema, input);
  if (!read.ok) return read;
  const week = readWeek(read.value.value);
  if (!week.ok) return week;
  const found = weekFound(week.value, solver, limits);
  if (!found.ok) return found;
  return good({ json: withoutNoise(weekJson(week.value, found.value, write)), unused: read.value.unused });
}
