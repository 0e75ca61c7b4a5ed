import { type ClassSheet, classSheet, type PriceSheet } from "#app/views";
import type { ClassDocument } from "#core/class";
import { capacityOf, type Hall, type HallDocument, type ArrangedMatPlan, readHall } from "#core/hall";
import type { PracticeDocument, Problem } from "#core/words";
import { useDeferredValue, useMemo } from "react";
import { useMatPlan } from "../floor/use-mat-plan.ts";
import { currencyOf } from "../hall/hall-form.ts";
import { usePriceSheet } from "../prices/use-price-sheet.ts";
import type { WorkerAnswer } from "../prices/use-worker-answer.ts";
import { today } from "../words/dates.ts";
import { moneyWords } from "../words/money-words.ts";

/** What the page works out by itself; the same object until the next answer. */
export type ClassAnswers = {
  readonly sheet: ClassSheet;
  /** the hall with the mats of this class, and its plan; null until both are there */
  readonly planned: { readonly hall: Hall; readonly plan: ArrangedMatPlan } | null;
  /** a plan for what was just changed is being worked out */
  readonly working: boolean;
  /** what is wrong with the floor or the mats */
  readonly floorProblems: readonly Problem[];
};

export type SheetAnswers = {
  readonly answers: ClassAnswers;
  /** the further questions about prices, worked out beside the page and there a moment later */
  readonly asked: WorkerAnswer<PriceSheet>;
  /** everything that keeps an answer back, for the fields */
  readonly problems: readonly Problem[];
};

/** Everything that the class sheet says, worked out in the page at every change. */
export function useClassAnswers(
  typed: ClassDocument,
  typedHall: HallDocument | null,
  practice: PracticeDocument,
): SheetAnswers {
  // a key shows in its box at once; the answers follow in a render that the next key may interrupt
  const document = useDeferredValue(typed);
  const hall = useDeferredValue(typedHall);
  const laid = useMemo(() => laidHall(document.mats, hall), [document.mats, hall]);
  const fitted = useMatPlan(
    laid?.ok === true ? laid.value : null,
    document.arrangement ?? hall?.arrangement ?? "lines",
  );
  const plan = laid?.ok === true ? fitted.plan : null;
  const sheet = useMemo(() => sheetOf(document, hall, practice, plan), [document, hall, practice, plan]);
  const places = sheet.mats.kind === "ready" ? sheet.mats.capacity.capacity : null;
  const asked = usePriceSheet(
    useMemo(
      () => ({
        practice: { currency: practice.currency, locale: practice.locale },
        document,
        hall,
        today: today(),
        capacity: places === null ? null : { capacity: places },
      }),
      [practice.currency, practice.locale, document, hall, places],
    ),
  );
  const floorProblems = laid === null || laid.ok ? none : laid.problems;
  const problems = useMemo(
    () => [...problemsOf(sheet), ...askedProblems(asked.answer), ...floorProblems.map(onTheMats)],
    [sheet, asked.answer, floorProblems],
  );
  const planned = useMemo(
    () => (plan === null || fitted.hall === null ? null : { hall: fitted.hall, plan }),
    [plan, fitted.hall],
  );
  const working = laid?.ok === true && (plan === null || fitted.old);
  const answers = useMemo(
    () => ({ sheet, planned, working, floorProblems }),
    [sheet, planned, working, floorProblems],
  );
  return { answers, asked, problems };
}

const none: readonly Problem[] = [];

/** The hall with this class's own mats and gaps where it has any. */
function laidHall(mats: ClassDocument["mats"], hall: HallDocument | null) {
  if (hall === null) return null;
  return readHall(mats === null ? hall : { ...hall, ...mats });
}

function sheetOf(
  document: ClassDocument,
  hall: HallDocument | null,
  practice: PracticeDocument,
  plan: ArrangedMatPlan | null,
): ClassSheet {
  const currency = currencyOf(practice.currency);
  const { matsOwned, ownCap, insurerCap } = document;
  const capacity =
    plan === null
      ? null
      : capacityOf(plan, {
          postedCapacity: hall?.postedCapacity,
          peopleNotOnMats: hall?.peopleNotOnMats,
          matsOwned,
          ownCap,
          insurerCap,
        });
  return classSheet({
    practice,
    document,
    hall,
    plan,
    capacity,
    today: today(),
    money: (exact) => moneyWords(exact, currency, practice.locale),
  });
}

function problemsOf(sheet: ClassSheet): readonly Problem[] {
  const parts = [sheet.mats, sheet.evening, sheet.prices, sheet.ordinary, sheet.year];
  return parts.flatMap((part) => (part.kind === "unsound" ? part.problems : []));
}

/** What is wrong with the further questions alone; what they share with the sheet is told there. */
function askedProblems(asked: PriceSheet | null): readonly Problem[] {
  if (asked === null) return none;
  const parts = [asked.passes, asked.owed, asked.curve, asked.higher, asked.studio];
  return parts.flatMap((part) => (part.kind === "unsound" ? part.problems : []));
}

/** What is wrong with the mats is said of the hall's document; this sheet's own stand under "mats". */
function onTheMats(problem: Problem): Problem {
  const ours = problem.place.startsWith("gaps.") || problem.place.startsWith("mat.");
  return ours ? { ...problem, place: `mats.${problem.place}` } : problem;
}
