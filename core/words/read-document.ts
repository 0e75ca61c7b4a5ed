import type { z } from "zod";
import { type DocumentPath, placeOf, valueAt } from "./document-path.ts";
import { bad, good, type Problem, problem, type Result } from "./problem.ts";

/**
 * A document that fits its schema, and the places of what the schema does not know.
 * { gaps: { side: 0.5, ennd: 0.2 } } leaves unused ["gaps.ennd"]: a typo is told, not swallowed.
 */
export type ReadDocument<Document> = { readonly value: Document; readonly unused: readonly string[] };

/**
 * Reads what came from a file, a form or another program against a schema.
 * Problems: "document-missing", "document-wrong-kind", "document-not-a-number", "document-choice",
 * "document-length", "document-unreadable"; all of them at once, in the order of the document.
 */
export function readDocument<Schema extends z.ZodType>(
  schema: Schema,
  input: unknown,
): Result<ReadDocument<z.output<Schema>>> {
  const read = schema.safeParse(input);
  if (!read.success) return bad(...read.error.issues.map((issue) => issueAsProblem(issue, [], input)));
  return good({ value: read.data, unused: unusedPlaces(input, read.data, []) });
}

type Issue = z.core.$ZodIssue;

function issueAsProblem(issue: Issue, above: DocumentPath, input: unknown): Problem {
  const path = [...above, ...issue.path];
  const found = valueAt(input, path);
  if (issue.code === "invalid_union") {
    const options = "options" in issue ? (issue.options ?? []) : [];
    return issue.errors.length === 0 && options.length > 0
      ? choiceProblem(options, path, found)
      : unionProblem(issue.errors, path, input);
  }
  const what = naming(path);
  if (found === undefined) {
    const next = path.length === 0 ? `Give ${wanted([issue])}.` : `Add it: ${wanted([issue])}.`;
    return problem("document-missing", placeOf(path), `${what} is missing.`, next);
  }
  if (typeof found === "number" && !Number.isFinite(found)) {
    const says = `${what} is ${found}, which is not a number we can use.`;
    return problem("document-not-a-number", placeOf(path), says, "Give an ordinary number.");
  }
  return foundProblem(issue, path, found);
}

function foundProblem(issue: Issue, path: DocumentPath, found: unknown): Problem {
  const what = naming(path);
  const place = placeOf(path);
  if (issue.code === "invalid_type") return wrongKind(place, what, found, wanted([issue]));
  if (issue.code === "invalid_value") {
    return problem("document-choice", place, `${what} is ${shown(found)}.`, `Give ${wanted([issue])}.`);
  }
  if ((issue.code === "too_small" || issue.code === "too_big") && Array.isArray(found)) {
    const limit = issue.code === "too_small" ? issue.minimum : issue.maximum;
    const says = `${what} has ${found.length} ${found.length === 1 ? "value" : "values"}.`;
    return problem("document-length", place, says, `Give ${limit} values.`);
  }
  return problem("document-unreadable", place, `${what} cannot be read.`, "Compare it with an example.");
}

/** One word chooses between several shapes: { form: "flat" } or { form: "per head" }; the words are all named. */
function choiceProblem(options: readonly unknown[], path: DocumentPath, found: unknown): Problem {
  const words = options.map((it) => `“${String(it)}”`);
  const either = `${words.slice(0, -1).join(", ")} or ${words.at(-1) ?? ""}`;
  const place = placeOf(path);
  const what = naming(path);
  return found === undefined
    ? problem("document-missing", place, `${what} is missing.`, `Add it: ${either}.`)
    : problem("document-choice", place, `${what} is ${shown(found)}.`, `Give ${either}.`);
}

/** A choice between simple kinds names them all; a choice between objects tells of the nearest fit. */
function unionProblem(branches: readonly (readonly Issue[])[], path: DocumentPath, input: unknown): Problem {
  const deep = branches.flat().find((issue) => issue.path.length > 0);
  if (deep !== undefined) return issueAsProblem(deep, path, input);
  const found = valueAt(input, path);
  const what = naming(path);
  const either = wanted(branches.flat());
  if (found === undefined) {
    return problem("document-missing", placeOf(path), `${what} is missing.`, `Add it: ${either}.`);
  }
  if (typeof found === "number" && !Number.isFinite(found)) {
    const says = `${what} is ${found}, which is not a number we can use.`;
    return problem("document-not-a-number", placeOf(path), says, `Give ${either}.`);
  }
  return wrongKind(placeOf(path), what, found, either);
}

function wrongKind(place: string, what: string, found: unknown, expected: string): Problem {
  return problem("document-wrong-kind", place, `${what} is ${shown(found)}.`, `Give ${expected}.`);
}

const kinds: Readonly<Record<string, string>> = {
  string: "text",
  number: "a number",
  boolean: "true or false",
  array: "a list",
  tuple: "a list",
  object: "an object with named values",
  record: "an object with named values",
  null: "null",
};

function wanted(issues: readonly Issue[]): string {
  const choices = issues.flatMap((issue) => {
    if (issue.code === "invalid_type") return [kinds[issue.expected] ?? issue.expected];
    if (issue.code === "invalid_value") return issue.values.map((value) => shown(value));
    return [];
  });
  return choices.length === 0 ? "a value of the right kind" : [...new Set(choices)].join(" or ");
}

function naming(path: DocumentPath): string {
  const place = placeOf(path);
  return place === "" ? "The document" : `“${place}”`;
}

const LONGEST_SHOWN = 40;

function shown(found: unknown): string {
  if (found === null) return "empty (null)";
  if (Array.isArray(found)) return "a list";
  if (typeof found === "number" || typeof found === "boolean") return String(found);
  if (typeof found !== "string") return "an object";
  const text = found.length > LONGEST_SHOWN ? `${found.slice(0, LONGEST_SHOWN)}…` : found;
  return `the text “${text}”`;
}

/** The schema drops what it does not know, so a key that went in and did not come out is unused. */
function unusedPlaces(input: unknown, read: unknown, path: DocumentPath): readonly string[] {
  if (Array.isArray(input)) {
    return Array.isArray(read)
      ? input.flatMap((part, index) => unusedPlaces(part, read[index], [...path, index]))
      : [];
  }
  if (!isObject(input) || !isObject(read)) return [];
  return Object.entries(input).flatMap(([key, part]) => {
    const here = [...path, key];
    return Object.hasOwn(read, key) ? unusedPlaces(part, read[key], here) : [placeOf(here)];
  });
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}
