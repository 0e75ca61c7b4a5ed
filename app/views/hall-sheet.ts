import {
  type ArrangedMatPlan,
  type CapacityLimits,
  type Hall,
  type HallDocument,
  readHall,
} from "#core/hall";
import type { ClassDocument } from "#core/class";
import {
  hallSheet,
  type HallSheet,
  layHallSheet,
  type Paper,
  type PaperSize,
  usualPaper,
} from "#core/papers";
import { good, type PracticeDocument, type Result } from "#core/words";
import { dateWords } from "./date-words.ts";

export type HallSheetAsk = {
  readonly practice: Pick<PracticeDocument, "locale" | "units">;
  readonly hall: HallDocument;
  /** the class whose mats and caps the sheet is for; null for the hall's own */
  readonly forClass: Pick<ClassDocument, "name" | "mats" | "matsOwned" | "ownCap" | "insurerCap"> | null;
  /** YYYY-MM-DD */
  readonly today: string;
  /** "version 7 of its measures" */
  readonly madeFrom: string;
  /** what the printer holds; A4, or Letter in the United States, unless told */
  readonly size?: PaperSize;
  /** lays the mats on the hall that was read */
  readonly planOf: (hall: Hall) => ArrangedMatPlan;
};

export type HallSheetView = { readonly sheet: HallSheet; readonly paper: Paper };

/** The hall sheet as words and as pages, for the screen, for the printer and for a file. Problems: those of the hall. */
export function hallSheetView(ask: HallSheetAsk): Result<HallSheetView> {
  const { practice, forClass, today } = ask;
  const read = readHall(forClass?.mats == null ? ask.hall : { ...ask.hall, ...forClass.mats });
  if (!read.ok) return read;
  const sheet = hallSheet({
    hall: read.value,
    address: ask.hall.address ?? null,
    className: forClass?.name ?? null,
    plan: ask.planOf(read.value),
    limits: limitsOf(forClass),
    units: practice.units,
    locale: practice.locale,
    madeOn: { iso: today, words: dateWords(today, practice.locale) },
    madeFrom: ask.madeFrom,
  });
  return good({ sheet, paper: layHallSheet(sheet, ask.size ?? usualPaper(practice.locale)) });
}

function limitsOf(forClass: HallSheetAsk["forClass"]): CapacityLimits {
  if (forClass === null) return {};
  const { matsOwned, ownCap, insurerCap } = forClass;
  return { matsOwned, ownCap, insurerCap };
}
