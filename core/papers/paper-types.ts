// Example: a wall of 8.20 m at 1:50 is a line from [23, 60] to [187, 60], 0.7 mm thick: 164 mm on the paper.
// Invariant: a paper is the same whoever draws it; what a screen, a printer and a PDF show are these marks.
import type { Point } from "#kernels/geometry";
import type { Locale } from "#core/words";

export type PaperSize = "a4" | "letter";

/** Millimetres from the top left corner, y down; type in points; everything is black, white or a grey of ink. */
export type Mark = LineMark | ShapeMark | TextMark;

export type LineMark = {
  readonly kind: "line";
  readonly points: readonly Point[];
  /** millimetres */
  readonly width: number;
  /** millimetres of ink and of paper, in turn */
  readonly dash?: readonly number[];
};

export type ShapeMark = {
  readonly kind: "shape";
  readonly points: readonly Point[];
  readonly fill: "paper" | "ink" | "none";
  /** of its edge, 0 for none */
  readonly width: number;
  readonly dash?: readonly number[];
};

export type TextMark = {
  readonly kind: "text";
  readonly text: string;
  /** on the base line: where the text begins, its middle or its end, by `anchor` */
  readonly at: Point;
  /** points */
  readonly size: number;
  readonly weight: Weight;
  readonly anchor: "start" | "middle" | "end";
  /** degrees clockwise about `at` */
  readonly turn: number;
  /** a box of bare paper is laid under it, so that it can be read over hatching */
  readonly onPaper?: boolean;
};

export type Weight = "regular" | "bold";

/** What a part of the page is to somebody who hears it read; "frame" is passed over. */
export type PaperRole = "title" | "heading" | "paragraph" | "item" | "figure" | "frame";

export type PaperPart = {
  readonly role: PaperRole;
  /** the part as words: what is read aloud of a figure, and the plain text of the others */
  readonly says: string;
  readonly marks: readonly Mark[];
};

export type PaperPage = { readonly parts: readonly PaperPart[] };

/** A finished paper: what every page holds and where. */
export type Paper = {
  readonly title: string;
  readonly language: Locale;
  readonly size: PaperSize;
  /** YYYY-MM-DD */
  readonly madeOn: string;
  /** of a page, in millimetres, as it lies before the reader */
  readonly width: number;
  readonly height: number;
  /** the drawing is one so-many-th of the hall; null on a paper without one */
  readonly scale: number | null;
  /** of the body text, in points */
  readonly typeSize: number;
  readonly pages: readonly PaperPage[];
};
