import { type Problem, readDocument } from "#core/words";
import type { FastifySchemaCompiler } from "fastify";
import type { z } from "zod";

/** An error that carries what the sender can mend; Fastify passes errors on and nothing else. */
export type ProblemsError = Error & { readonly problems: readonly Problem[] };

/** Requests are read by the core's own reader, so that what is wrong is told in the same words everywhere. */
export const readRequest: FastifySchemaCompiler<z.ZodType> =
  ({ schema }) =>
  (data) => {
    const read = readDocument(schema, data);
    if (read.ok) return { value: read.value.value };
    return { error: Object.assign(new Error("request"), { problems: read.problems }) };
  };

export function isProblemsError(error: unknown): error is ProblemsError {
  return error instanceof Error && "problems" in error && Array.isArray(error.problems);
}
