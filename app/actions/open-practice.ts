import type { Change, PlanDocument, PracticeWhole, Store } from "#app/ports";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { HappenedDocument } from "#core/outlook";
import type { Result } from "#core/words";
import { readIds } from "./read-ids.ts";
import { readPractice } from "./read-practice.ts";

/** What a practice starts with, each with the id it is to be kept under. */
export type PracticeStartDocuments = {
  readonly practice: unknown;
  readonly halls: readonly { readonly id: string; readonly document: HallDocument }[];
  readonly classes: readonly { readonly id: string; readonly document: ClassDocument }[];
  readonly happened: readonly { readonly id: string; readonly document: HappenedDocument }[];
  readonly plans: readonly { readonly id: string; readonly document: PlanDocument }[];
};

export type OpenPracticeOrder = {
  readonly action: string;
  readonly id: string;
  readonly start: PracticeStartDocuments;
};

/** She opens a practice, empty or with what the invented demo brings, all of it in one go. */
export async function openPractice(store: Store, order: OpenPracticeOrder): Promise<Result<PracticeWhole>> {
  const ids = readIds({ action: order.action, practice: order.id });
  if (!ids.ok) return ids;
  const practice = readPractice(order.start.practice);
  if (!practice.ok) return practice;
  const changes: readonly Change[] = [
    { kind: "practice", from: 0, document: practice.value.value },
    ...order.start.halls.map((hall) => ({ kind: "hall", from: 0, ...hall }) as const),
    ...order.start.classes.map((it) => ({ kind: "class", from: 0, ...it }) as const),
    ...order.start.happened.map((it) => ({ kind: "happened", from: 0, ...it }) as const),
    ...order.start.plans.map((plan) => ({ kind: "plan", from: 0, ...plan }) as const),
  ];
  const done = await store.commit({ action: order.action, practice: order.id, changes });
  return done.ok ? store.whole(order.id) : done;
}
