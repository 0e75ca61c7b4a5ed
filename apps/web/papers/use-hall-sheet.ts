import { type HallSheetView, hallToLay, type SheetClass } from "#app/views";
import type { HallDocument } from "#core/hall";
import type { PaperSize } from "#core/papers";
import type { PracticeDocument, Problem, Result } from "#core/words";
import { useMemo } from "react";
import { useMatPlan } from "../floor/use-mat-plan.ts";
import { useWorkerAnswer } from "../prices/use-worker-answer.ts";
import { today } from "../words/dates.ts";
import type { HallSheetJob } from "./hall-sheet-worker.ts";

export type HallSheetState =
  | { readonly kind: "working" }
  | { readonly kind: "problems"; readonly problems: readonly Problem[] }
  | { readonly kind: "failed"; readonly says: string }
  | { readonly kind: "ready"; readonly view: HallSheetView };

type Ask = {
  readonly practice: PracticeDocument;
  readonly hall: HallDocument;
  readonly forClass: SheetClass;
  readonly madeFrom: string;
  readonly size: PaperSize;
};

/** The sheet of a hall as it stands on this device, the mats and the pages worked out beside the page. */
export function useHallSheet({ practice, hall, forClass, madeFrom, size }: Ask): HallSheetState {
  const read = useMemo(() => hallToLay(hall, forClass), [hall, forClass]);
  const laid = read.ok ? read.value : null;
  const fitted = useMatPlan(laid?.hall ?? null, laid?.arrangement ?? "lines");
  const plan = fitted.old ? null : fitted.plan;
  const job = useMemo(
    (): HallSheetJob | null =>
      plan === null ? null : { practice, hall, forClass, today: today(), madeFrom, size, plan },
    [plan, practice, hall, forClass, madeFrom, size],
  );
  const answered = useWorkerAnswer<Result<HallSheetView>>(startSheetWorker, job);
  if (!read.ok) return { kind: "problems", problems: read.problems };
  const failure = fitted.failure ?? answered.failure;
  if (failure !== null) return { kind: "failed", says: failure };
  if (answered.answer === null || answered.old) return { kind: "working" };
  return answered.answer.ok
    ? { kind: "ready", view: answered.answer.value }
    : { kind: "problems", problems: answered.answer.problems };
}

function startSheetWorker(): Worker {
  return new Worker(new URL("./hall-sheet-worker.ts", import.meta.url), { type: "module" });
}
