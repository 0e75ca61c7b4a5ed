import { bad, good, type Problem, problem, type Result } from "#core/words";

const silent = problem(
  "server-silent",
  "",
  "The server does not answer.",
  "What you change is kept on this device; try again when the server is back.",
);
const unreadable = problem(
  "server-unreadable",
  "",
  "The server answered with something that is not Hallful’s.",
  "Check that the address is that of your Hallful server, then try again.",
);

export type Asking = {
  readonly method: "GET" | "POST" | "PUT" | "DELETE";
  readonly body?: unknown;
  /** milliseconds after which a server that has not answered counts as silent: a hall's weak signal hangs for minutes */
  readonly patience?: number;
};

/** Asks the server; every failure comes back as problems, never as an exception. */
export async function ask(path: string, asking: Asking = { method: "GET" }): Promise<Result<unknown>> {
  let answer: Response;
  let text: string;
  try {
    answer = await fetch(path, requestOf(asking));
    text = await answer.text();
  } catch {
    return bad(silent);
  }
  // a proxy in front of a dead server answers for it
  if (answer.status === 502 || answer.status === 503 || answer.status === 504) return bad(silent);
  return readAnswer(answer, text);
}

function requestOf({ method, body, patience }: Asking): RequestInit {
  const headers: Record<string, string> = { accept: "application/json" };
  const until = patience === undefined ? {} : { signal: AbortSignal.timeout(patience) };
  if (body === undefined) return { method, headers, ...until };
  headers["content-type"] = "application/json";
  return { method, headers, ...until, body: JSON.stringify(body) };
}

function readAnswer(answer: Response, text: string): Result<unknown> {
  let value: unknown = null;
  try {
    value = text === "" ? null : JSON.parse(text);
  } catch {
    return bad(unreadable);
  }
  if (answer.ok) return good(value);
  return bad(...problemsIn(value));
}

/** The problems in a refusal; one of our own where the refusal names none. */
export function problemsIn(value: unknown): readonly Problem[] {
  if (typeof value !== "object" || value === null || !("problems" in value)) return [unreadable];
  const { problems } = value;
  if (!Array.isArray(problems)) return [unreadable];
  const read = problems.filter(isProblem);
  return read.length > 0 ? read : [unreadable];
}

function isProblem(it: unknown): it is Problem {
  return (
    typeof it === "object" &&
    it !== null &&
    ["code", "place", "says", "next"].every((key) => typeof Reflect.get(it, key) === "string")
  );
}
