import type { ClassDocument } from "./class-document.ts";
import type { ClassOutlook } from "./class-outlook-document.ts";
import { isGuess } from "./guesses.ts";

// A class without an outlook: one newcomer a week, 4 of 10 stay, turn-up 0.6 — all of them guesses.
// Always: every figure has a value, and one that nobody entered is a guess.

export type OutlookFigure =
  | "roll.newcomers"
  | "roll.stays"
  | "roll.attends"
  | "roll.leaves"
  | "roll.luck"
  | "opening.turnUp"
  | "opening.returns"
  | "notice.days"
  | "notice.term";

/** Planning assumptions, common practice and no source of their own: half to two thirds of a free class turn up. */
const usual: Readonly<Record<OutlookFigure, number>> = {
  "roll.newcomers": 1,
  "roll.stays": 0.4,
  "roll.attends": 0.65,
  "roll.leaves": 0.02,
  "roll.luck": 0.15,
  "opening.turnUp": 0.6,
  "opening.returns": 0.4,
  "notice.days": 28,
  "notice.term": 12,
};

type Planned = Pick<ClassDocument, "outlook" | "guesses">;

/** A figure of the outlook; the usual one where none was entered. */
export function outlookFigure({ outlook }: Pick<Planned, "outlook">, name: OutlookFigure): number {
  return entered(outlook, name) ?? usual[name];
}

/** A figure that nobody entered is a guess, and so is one that is listed. */
export function isOutlookGuess(document: Planned, name: OutlookFigure): boolean {
  return entered(document.outlook, name) === undefined || isGuess(document, `outlook.${name}`);
}

/** The class with a figure of its outlook written down. */
export function withOutlookFigure<Document extends Planned>(
  document: Document,
  name: OutlookFigure,
  value: number,
): Document {
  const { outlook = {} } = document;
  const [part, field] = partsOf(name);
  return { ...document, outlook: { ...outlook, [part]: { ...outlook[part], [field]: value } } };
}

/** The figure that a path of the class names; null for every other path. */
export function outlookFigureAt(path: string): OutlookFigure | null {
  return names.find((name) => path === `outlook.${name}`) ?? null;
}

const names: readonly OutlookFigure[] = [
  "roll.newcomers",
  "roll.stays",
  "roll.attends",
  "roll.leaves",
  "roll.luck",
  "opening.turnUp",
  "opening.returns",
  "notice.days",
  "notice.term",
];

function entered(outlook: ClassOutlook | undefined, name: OutlookFigure): number | undefined {
  switch (name) {
    case "roll.newcomers":
      return outlook?.roll?.newcomers;
    case "roll.stays":
      return outlook?.roll?.stays;
    case "roll.attends":
      return outlook?.roll?.attends;
    case "roll.leaves":
      return outlook?.roll?.leaves;
    case "roll.luck":
      return outlook?.roll?.luck;
    case "opening.turnUp":
      return outlook?.opening?.turnUp;
    case "opening.returns":
      return outlook?.opening?.returns;
    case "notice.days":
      return outlook?.notice?.days;
    case "notice.term":
      return outlook?.notice?.term;
  }
}

function partsOf(name: OutlookFigure): readonly ["roll" | "opening" | "notice", string] {
  const [part, field = ""] = name.split(".");
  return [part === "roll" || part === "opening" ? part : "notice", field];
}
