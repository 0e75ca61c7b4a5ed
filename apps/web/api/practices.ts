import { queryOptions } from "@tanstack/react-query";
import type { Kept, PracticeWhole } from "#app/ports";
import { good, type PracticeDocument, type Problem, type Result } from "#core/words";
import { keepOnDevice, readOnDevice } from "../drafts/on-device.ts";
import { ask } from "./ask.ts";
import { newId } from "./new-id.ts";

/** What was read, and whether it is the server's answer or the copy that this device kept of it. */
export type Heard<Value> = { readonly value: Value; readonly silent: Problem | null };

/** An error that carries problems, for TanStack Query, which knows failure as an exception only. */
export class ProblemsError extends Error {
  readonly problems: readonly Problem[];
  constructor(problems: readonly Problem[]) {
    super(problems.map((it) => it.says).join(" "));
    this.problems = problems;
  }
}

type Practices = { readonly practices: readonly Kept<PracticeDocument>[] };

export const practicesQuery = queryOptions({
  queryKey: ["practices"],
  queryFn: () => heard<Practices>("/api/practices", "copy/practices"),
});

export function practiceQuery(practice: string) {
  return queryOptions({
    queryKey: ["practice", practice],
    queryFn: () =>
      heard<PracticeWhole>(`/api/practices/${encodeURIComponent(practice)}`, `copy/practice/${practice}`),
  });
}

/** How long the server is waited for where this device has a copy, in milliseconds. */
const PATIENCE = 5000;

/** Reads from the server and keeps a copy; a silent server is answered for by the copy. */
async function heard<Value>(path: string, copy: string): Promise<Heard<Value>> {
  const kept = readOnDevice(copy);
  // with a copy at hand a weak signal is not waited for
  const answer = await ask(path, { method: "GET", ...(kept === null ? {} : { patience: PATIENCE }) });
  if (answer.ok) {
    keepOnDevice(copy, answer.value);
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server, same contract
    return { value: answer.value as Value, silent: null };
  }
  const silent = answer.problems.find((it) => it.code === "server-silent");
  if (silent === undefined || kept === null) throw new ProblemsError(answer.problems);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- written above by ourselves
  return { value: kept as Value, silent };
}

export type Start = "empty" | "demo-marlsford" | "demo-cedar-fork";

/** Begins a practice and answers its id. The document is asked for when it begins empty. */
export async function beginPractice(start: Start, document?: PracticeDocument): Promise<Result<string>> {
  const id = newId();
  const history = start !== "empty";
  const body = { action: newId(), id, start, history, ...(document === undefined ? {} : { document }) };
  const answer = await ask("/api/practices", { method: "POST", body });
  return answer.ok ? good(id) : answer;
}
