import type { Problem } from "#core/words";

/*
 * Version 3 is open and she types: unsent. A moment later it is sent under an action id. The answer is
 * lost with the signal: the same content goes out again under the same id, so that doing it twice does it
 * once, and only then what was typed since.
 *
 * Invariant: nothing that was typed is ever dropped by an answer of the server; only she drops it.
 */

/** A save that is on its way or has not been answered. */
export type Sending<Document> = {
  readonly action: string;
  readonly from: number;
  readonly document: Document;
};

export type SaveState =
  | {
      readonly kind: "saved" /** when, ISO; null before the first change of this visit */;
      readonly at: string | null;
    }
  | { readonly kind: "waiting" }
  | { readonly kind: "sending" }
  | { readonly kind: "kept"; readonly why: Problem }
  | { readonly kind: "refused"; readonly problems: readonly Problem[] }
  | { readonly kind: "clash" };

export type Draft<Document> = {
  /** the version that the server is known to have, 0 for none */
  readonly from: number;
  readonly document: Document;
  /** what stands in fields whose text could not be used, by the path of the field */
  readonly typed: Readonly<Record<string, string>>;
  readonly unsent: boolean;
  readonly sending: Sending<Document> | null;
  readonly state: SaveState;
};

export function openDraft<Document>(from: number, document: Document): Draft<Document> {
  return { from, document, typed: {}, unsent: false, sending: null, state: { kind: "saved", at: null } };
}

/** A document that the server has not seen yet. */
export function newDraft<Document>(document: Document): Draft<Document> {
  return { ...openDraft(0, document), unsent: true, state: { kind: "waiting" } };
}

export function changeDocument<Document>(draft: Draft<Document>, document: Document): Draft<Document> {
  if (document === draft.document) return draft;
  const state: SaveState = draft.state.kind === "clash" ? draft.state : { kind: "waiting" };
  return { ...draft, document, unsent: true, state };
}

/** Keeps the text of a field that cannot be used; null when the field is good again. */
export function changeTyped<Document>(
  draft: Draft<Document>,
  path: string,
  text: string | null,
): Draft<Document> {
  if (text === null && !(path in draft.typed)) return draft;
  const { [path]: _, ...others } = draft.typed;
  return { ...draft, typed: text === null ? others : { ...others, [path]: text } };
}

/** Forgets the texts of all fields under a path: their row is gone. */
export function dropTyped<Document>(draft: Draft<Document>, start: string): Draft<Document> {
  const left = Object.entries(draft.typed).filter(([path]) => !path.startsWith(start));
  return { ...draft, typed: Object.fromEntries(left) };
}

/** What is to go out now, under the id given unless an unanswered save comes first; null when nothing is. */
export function startSending<Document>(draft: Draft<Document>, action: string): Draft<Document> | null {
  if (draft.state.kind === "clash" || draft.state.kind === "sending") return null;
  if (draft.sending !== null) return { ...draft, state: { kind: "sending" } };
  if (!draft.unsent) return null;
  const sending = { action, from: draft.from, document: draft.document };
  return { ...draft, sending, state: { kind: "sending" } };
}

/** The server has saved what was sent, as `version`. */
export function acknowledged<Document>(draft: Draft<Document>, version: number, at: string): Draft<Document> {
  const unsent = draft.sending === null ? draft.unsent : draft.sending.document !== draft.document;
  return {
    ...draft,
    from: version,
    unsent,
    sending: null,
    state: unsent ? { kind: "waiting" } : { kind: "saved", at },
  };
}

/** The server did not answer, or refused. Only silence leaves the save to be repeated as it was. */
export function notSaved<Document>(draft: Draft<Document>, problems: readonly Problem[]): Draft<Document> {
  const [first] = problems;
  if (first === undefined) throw new RangeError("a save failed without a problem");
  if (first.code === "server-silent") return { ...draft, state: { kind: "kept", why: first } };
  const dropped = { ...draft, sending: null, unsent: true };
  if (first.code === "changed-elsewhere") return { ...dropped, state: { kind: "clash" } };
  return { ...dropped, state: { kind: "refused", problems } };
}

/** The server has `version` of it now: taken where nothing is unsent, a clash where something is. */
export function heardVersion<Document>(
  draft: Draft<Document>,
  version: number,
  document: Document,
): Draft<Document> {
  if (version <= draft.from) return draft;
  if (draft.sending !== null) return draft;
  if (draft.unsent) return { ...draft, state: { kind: "clash" } };
  return { ...openDraft(version, document), typed: draft.typed };
}

/** After a clash: what is here goes over the server's version. */
export function keepMine<Document>(draft: Draft<Document>, version: number): Draft<Document> {
  return { ...draft, from: version, unsent: true, sending: null, state: { kind: "waiting" } };
}
