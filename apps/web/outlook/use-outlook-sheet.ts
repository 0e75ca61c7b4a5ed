import type { OutlookSheet } from "#app/views";
import type { Problem } from "#core/words";
import { useMemo } from "react";
import { useSettled } from "../measuring/use-settled.ts";
import { useWorkerAnswer, type WorkerAnswer } from "../prices/use-worker-answer.ts";
import { today } from "../words/dates.ts";
import type { OutlookJob } from "./outlook-worker.ts";

/**
 * The questions about a class's future, answered beside the page once what was typed stands still: learning from a
 * record takes some tenths of a second, and no key waits for it.
 */
export function useOutlookSheet({
  practice,
  document,
  hall,
  capacity,
  mats,
  happened,
}: Omit<OutlookJob, "today">): WorkerAnswer<OutlookSheet> {
  const places = capacity?.capacity ?? null;
  const { currency, locale } = practice;
  const job = useMemo(
    () => ({
      practice: { currency, locale },
      document,
      hall,
      today: today(),
      capacity: places === null ? null : { capacity: places },
      mats,
      happened,
    }),
    [currency, locale, document, hall, places, mats, happened],
  );
  return useWorkerAnswer<OutlookSheet>(startOutlookWorker, useSettled(job));
}

function startOutlookWorker(): Worker {
  return new Worker(new URL("./outlook-worker.ts", import.meta.url), { type: "module" });
}

/** What is wrong with the class's own guesses about its future, for the fields. */
export function outlookProblems(sheet: OutlookSheet | null): readonly Problem[] {
  if (sheet === null) return [];
  return [sheet.opening, sheet.going].flatMap((part) =>
    part.kind === "unsound" ? part.problems.filter(({ place }) => place.startsWith("outlook")) : [],
  );
}
