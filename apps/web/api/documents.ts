import type { PracticeWhole } from "#app/ports";
import { bad, good, problem, type Result } from "#core/words";
import type { Sending } from "../drafts/draft.ts";
import type { Documents, Kind } from "../drafts/kept-drafts.ts";
import { ask } from "./ask.ts";

const addressOf = (practice: string, kind: Kind, id: string) => {
  const start = `/api/practices/${encodeURIComponent(practice)}`;
  const one = encodeURIComponent(id);
  if (kind === "details") return start;
  return kind === "happened" ? `${start}/classes/${one}/happened` : `${start}/${kind}/${one}`;
};

/** Saves one document; answers the version it now has. */
export async function saveDocument<K extends Kind>(
  practice: string,
  kind: K,
  id: string,
  sending: Sending<Documents[K]>,
): Promise<Result<{ readonly version: number }>> {
  const answer = await ask(addressOf(practice, kind, id), { method: "PUT", body: sending });
  return answer.ok ? good({ version: sending.from + 1 }) : answer;
}

/** Deletes one document as of the version given. */
export async function removeDocument(
  practice: string,
  kind: "halls" | "classes",
  id: string,
  removal: { readonly action: string; readonly from: number },
): Promise<Result<null>> {
  const answer = await ask(addressOf(practice, kind, id), { method: "DELETE", body: removal });
  return answer.ok ? good(null) : answer;
}

/** The server's own version of one document, null when it has none. */
export async function fetchDocument<K extends Kind>(
  practice: string,
  kind: K,
  id: string,
): Promise<Result<{ readonly version: number; readonly document: Documents[K] } | null>> {
  const answer = await ask(`/api/practices/${encodeURIComponent(practice)}`);
  if (!answer.ok) return answer;
  if (typeof answer.value !== "object" || answer.value === null) return bad(gone);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server, same contract
  return good(documentIn(answer.value as PracticeWhole, kind, id));
}

/** Finds a document in a practice. */
export function documentIn<K extends Kind>(
  whole: PracticeWhole,
  kind: K,
  id: string,
): { readonly version: number; readonly document: Documents[K] } | null {
  const found: unknown = kind === "details" ? whole.practice : listOf(whole, kind).find((it) => it.id === id);
  if (found === undefined) return null;
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the kind names the list it was found in
  return found as { readonly version: number; readonly document: Documents[K] };
}

const gone = problem("not-found", "", "The practice is no longer on the server.", "Go to your practices.");

/** The documents of one kind in a practice. */
export function listOf(
  whole: PracticeWhole,
  kind: Exclude<Kind, "details">,
): readonly { readonly id: string }[] {
  // a copy that this device kept of an older server has no plans
  const listed: readonly { readonly id: string }[] | undefined = whole[kind];
  return listed ?? [];
}
