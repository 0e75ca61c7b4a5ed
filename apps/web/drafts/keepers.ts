import type { QueryClient } from "@tanstack/react-query";
import type { PlanDocument, PracticeWhole } from "#app/ports";
import type { HappenedDocument } from "#core/outlook";
import { bad } from "#core/words";
import { documentIn, fetchDocument, listOf, saveDocument } from "../api/documents.ts";
import { newId } from "../api/new-id.ts";
import { type Heard, practiceQuery } from "../api/practices.ts";
import { type Draft, newDraft, openDraft } from "./draft.ts";
import { type Keeper, keeperOf } from "./keeper.ts";
import { unsoundness } from "./unsoundness.ts";
import { type Documents, dropDraft, type Kind, keepDraft, keptDraft } from "./kept-drafts.ts";

/*
 * One keeper for each open document for as long as the page lives: leaving a place does not lose a save
 * that is on its way.
 */
const keepers = new Map<string, unknown>();
const nameOf = (practice: string, kind: Kind, id: string) => `${practice}/${kind}/${id}`;

/** The keeper of a document, opened from this device's draft or the server's version; null for neither. */
export function keeperFor<K extends Kind>(
  queries: QueryClient,
  practice: string,
  kind: K,
  id: string,
): Keeper<Documents[K]> | null {
  const name = nameOf(practice, kind, id);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the name holds the kind
  const open = keepers.get(name) as Keeper<Documents[K]> | undefined;
  if (open !== undefined) return open;
  const known = knownVersion(queries, practice, kind, id);
  const kept = keptDraft(practice, kind, id);
  const opened = kept ?? (known === null ? blank(kind) : openDraft(known.version, known.document));
  return opened === null ? null : startKeeper(queries, practice, kind, id, opened);
}

/**
 * A class that never met has a record with nothing in it, and a practice that planned nothing an empty plan: no save
 * is owed before something is written.
 */
function blank<K extends Kind>(kind: K): Draft<Documents[K]> | null {
  if (kind !== "happened" && kind !== "plans") return null;
  const nothing: HappenedDocument | PlanDocument = kind === "happened" ? { sessions: [] } : {};
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the kind was asked
  return openDraft(0, nothing) as Draft<HappenedDocument | PlanDocument | Documents[K]> as Draft<
    Documents[K]
  >;
}

/** Opens a document that does not exist yet and begins to save it. */
export function beginDocument<K extends Kind>(
  queries: QueryClient,
  practice: string,
  kind: K,
  document: Documents[K],
): string {
  const id = newId();
  const keeper = startKeeper(queries, practice, kind, id, newDraft(document));
  keepDraft(practice, kind, id, keeper.read());
  void keeper.flush();
  return id;
}

/** Forgets a document that was deleted. */
export function forgetDocument(practice: string, kind: Kind, id: string): void {
  keepers.delete(nameOf(practice, kind, id));
  dropDraft(practice, kind, id);
}

function startKeeper<K extends Kind>(
  queries: QueryClient,
  practice: string,
  kind: K,
  id: string,
  opened: Draft<Documents[K]>,
): Keeper<Documents[K]> {
  const keeper = keeperOf<Documents[K]>(
    {
      send: (sending) => {
        const currency = knownVersion(queries, practice, "details", practice)?.document.currency;
        const unsound = unsoundness(kind, id, sending.document, currency);
        return unsound.length > 0
          ? Promise.resolve(bad(...unsound))
          : saveDocument(practice, kind, id, sending);
      },
      fetch: () => fetchDocument(practice, kind, id),
      keep: (draft) => keepDraft(practice, kind, id, draft),
      drop: () => dropDraft(practice, kind, id),
      saved: (version, document) => noteSaved(queries, practice, kind, { id, version, document }),
      newId,
      now: () => new Date().toISOString(),
    },
    opened,
  );
  keepers.set(nameOf(practice, kind, id), keeper);
  return keeper;
}

/** The version of a document that was last read from the server. */
export function knownVersion<K extends Kind>(queries: QueryClient, practice: string, kind: K, id: string) {
  const whole = queries.getQueryData(practiceQuery(practice).queryKey)?.value;
  return whole === undefined ? null : documentIn(whole, kind, id);
}

/** Puts what was saved into the practice that the pages read, without asking the server again. */
function noteSaved<K extends Kind>(
  queries: QueryClient,
  practice: string,
  kind: K,
  kept: { readonly id: string; readonly version: number; readonly document: Documents[K] },
): void {
  queries.setQueryData(practiceQuery(practice).queryKey, (heard) =>
    heard === undefined ? heard : { ...heard, value: withKept(heard, kind, kept) },
  );
  if (kind === "details") void queries.invalidateQueries({ queryKey: ["practices"] });
}

function withKept(
  { value: whole }: Heard<PracticeWhole>,
  kind: Kind,
  kept: { readonly id: string; readonly version: number; readonly document: Documents[Kind] },
): PracticeWhole {
  const listed = kind === "details" ? [] : listOf(whole, kind);
  const changed = kind === "details" ? kept : [...listed.filter((it) => it.id !== kept.id), kept];
  return { ...whole, [kind === "details" ? "practice" : kind]: changed };
}
