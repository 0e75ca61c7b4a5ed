import { useSuspenseQuery } from "@tanstack/react-query";
import type { PracticeWhole } from "#app/ports";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { PracticeDocument } from "#core/words";
import { useMemo } from "react";
import { practiceQuery } from "../api/practices.ts";
import { type Documents, keptDraft, keptDraftIds } from "./kept-drafts.ts";

export type Listed<Document> = { readonly id: string; readonly document: Document };

export type PracticeHere = {
  readonly practice: PracticeDocument;
  readonly halls: readonly Listed<HallDocument>[];
  readonly classes: readonly Listed<ClassDocument>[];
};

/** The practice as it stands on this device: the server's documents with what is not saved yet over them. */
export function usePractice(practice: string): PracticeHere {
  const { data } = useSuspenseQuery(practiceQuery(practice));
  // looked up once for each answer of the server or save, not at every frame of a drag
  return useMemo(() => practiceHere(practice, data.value), [practice, data]);
}

function practiceHere(practice: string, whole: PracticeWhole): PracticeHere {
  return {
    practice: keptDraft(practice, "details", practice)?.document ?? whole.practice.document,
    halls: here(practice, "halls", whole.halls),
    classes: here(practice, "classes", whole.classes),
  };
}

function here<K extends "halls" | "classes">(
  practice: string,
  kind: K,
  listed: readonly Listed<Documents[K]>[],
): readonly Listed<Documents[K]>[] {
  const ids = new Set([...listed.map((it) => it.id), ...keptDraftIds(practice, kind)]);
  const all = [...ids].flatMap((id) => {
    const document = keptDraft(practice, kind, id)?.document ?? listed.find((it) => it.id === id)?.document;
    return document === undefined ? [] : [{ id, document }];
  });
  const order = new Intl.Collator("en", { numeric: true });
  return all.sort((a, b) => order.compare(a.document.name, b.document.name));
}
