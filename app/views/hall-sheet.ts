import type { ClassDocument } from "#core/class";
import {
  type ArrangedMatPlan,
  type Arrangement,
  type CapacityLimits,
  type Hall,
  type HallDocument,
  readHall,
} from "#core/hall";
import {
  hallSheet,
  type HallSheet,
  layHallSheet,
  type Paper,
  type PaperSize,
  usualPaper,
} from "#core/papers";
import { good, MM_PER_METRE, type PracticeDocument, type Result } from "#core/words";
import { dateWords } from "./date-words.ts";

/** The class whose mats, way of standing and caps a sheet is for; null for the hall's own. */
export type SheetClass = Pick<
  ClassDocument,
  "name" | "mats" | "arrangement" | "matsOwned" | "ownCap" | "insurerCap"
> | null;

export type HallSheetAsk = {
  readonly practice: Pick<PracticeDocument, "locale" | "units">;
  readonly hall: HallDocument;
  readonly forClass: SheetClass;
  /** YYYY-MM-DD */
  readonly today: string;
  /** "version 7 of its measures" */
  readonly madeFrom: string;
  /** what the printer holds; A4, or Letter in the United States, unless told */
  readonly size?: PaperSize;
  /** lays the mats on the hall that was read */
  readonly planOf: (hall: Hall, arrangement: Arrangement) => ArrangedMatPlan;
};

export type HallSheetView = { readonly sheet: HallSheet; readonly paper: Paper };

/** The hall sheet as words and as pages, for the screen, for the printer and for a file. Problems: those of the hall. */
export function hallSheetView(ask: HallSheetAsk): Result<HallSheetView> {
  const { practice, forClass, today } = ask;
  const read = hallToLay(ask.hall, forClass);
  if (!read.ok) return read;
  const { hall, arrangement } = read.value;
  const { wayWidth } = ask.hall;
  const sheet = hallSheet({
    hall,
    address: ask.hall.address ?? null,
    className: forClass?.name ?? null,
    plan: ask.planOf(hall, arrangement),
    limits: limitsOf(forClass),
    wayWidth: wayWidth === undefined ? null : Math.round(wayWidth * MM_PER_METRE),
    units: practice.units,
    locale: practice.locale,
    madeOn: { iso: today, words: dateWords(today, practice.locale) },
    madeFrom: ask.madeFrom,
  });
  return good({ sheet, paper: layHallSheet(sheet, ask.size ?? usualPaper(practice.locale)) });
}

export type HallToLay = { readonly hall: Hall; readonly arrangement: Arrangement };

/** The hall with the class's own mats where it has any, and how they stand. Problems: those of the hall. */
export function hallToLay(hall: HallDocument, forClass: SheetClass): Result<HallToLay> {
  const mats = forClass?.mats ?? null;
  const read = readHall(mats === null ? hall : { ...hall, ...mats });
  if (!read.ok) return read;
  const arrangement = forClass?.arrangement ?? hall.arrangement ?? "lines";
  return good({ hall: read.value, arrangement });
}

function limitsOf(forClass: SheetClass): CapacityLimits {
  if (forClass === null) return {};
  const { matsOwned, ownCap, insurerCap } = forClass;
  return { matsOwned, ownCap, insurerCap };
}
