export { boundFigures } from "./bound-figures.ts";
export { hallSheet } from "./hall-sheet.ts";
export type { HallSheet, HallSheetInput, SheetSection } from "./hall-sheet-types.ts";
export { layHallSheet } from "./lay-hall-sheet.ts";
export { missingLetters } from "./missing-letters.ts";
export { usualPaper } from "./paper-size.ts";
export type {
  Mark,
  Paper,
  PaperPage,
  PaperPart,
  PaperRole,
  PaperSize,
  TextMark,
  Weight,
} from "./paper-types.ts";
export { isWritable, MM_PER_POINT, textWidth } from "./text-width.ts";
