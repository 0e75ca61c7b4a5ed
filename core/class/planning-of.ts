import type { ClassDocument } from "./class-document.ts";
import { isGuess } from "./guesses.ts";

/** The figures of a planning that always have a value. */
export type PlanningFigures = Readonly<Record<FigureName, number>>;
export type FigureName = "attendance" | "confidence" | "dispersion" | "termEvenings";

/**
 * Common practice, without a source of its own: a holder comes to three classes of five, 85 holders of 100
 * should use up their pass, evenings are half as uneven again as by chance alone, a term is twelve evenings.
 */
export const usualPlanning: PlanningFigures = {
  attendance: 0.6,
  confidence: 0.85,
  dispersion: 1.5,
  termEvenings: 12,
};

type Planned = Pick<ClassDocument, "planning" | "guesses">;

/** The planning figures of a class; the usual ones where none were entered. */
export function planningOf({ planning = {} }: Pick<Planned, "planning">): PlanningFigures {
  const { attendance, confidence, dispersion, termEvenings } = planning;
  return {
    attendance: attendance ?? usualPlanning.attendance,
    confidence: confidence ?? usualPlanning.confidence,
    dispersion: dispersion ?? usualPlanning.dispersion,
    termEvenings: termEvenings ?? usualPlanning.termEvenings,
  };
}

/** A figure that nobody entered is a guess, and so is one that is listed. */
export function isPlanningGuess(document: Planned, name: FigureName): boolean {
  return document.planning?.[name] === undefined || isGuess(document, `planning.${name}`);
}

/** The class with a planning figure written down as it stands, so that it can be called known. */
export function withFigure<Document extends Planned>(document: Document, name: FigureName): Document {
  return { ...document, planning: { ...document.planning, [name]: planningOf(document)[name] } };
}
