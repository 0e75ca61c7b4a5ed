import { formatLength, type LengthUnits } from "#core/words";
import { setOutSentences } from "../set-out-sentences.ts";
import type { ArrangedMatPlan, Middle } from "./arrangement-types.ts";
import { placesSentences } from "./places-sentences.ts";
import { ringSentences } from "./ring-sentences.ts";

/** How to lay a plan with a tape, of whichever arrangement, as sentences, one a line. */
export function setOutInWords(plan: ArrangedMatPlan, units: LengthUnits = "metric"): readonly string[] {
  switch (plan.arrangement) {
    case "lines":
    case "staggered":
      return setOutSentences(plan.setOut, units);
    case "facing":
      return [
        ...setOutSentences(plan.setOut, units),
        ...(plan.middle === null ? [] : [middleSentence(plan.middle, plan.setOut.linesFrom, units)]),
      ];
    case "round":
      return ringSentences(plan.ringSetOut, units);
    case "most":
      return placesSentences(plan.placesSetOut, units);
  }
}

function middleSentence({ afterLine, from, width }: Middle, linesFrom: string, units: LengthUnits): string {
  const said = (figure: number): string => formatLength(figure, units);
  return `Between line ${afterLine} and line ${afterLine + 1} the middle stays clear, from ${said(from)} to ${said(from + width)} from ${linesFrom}; heads lie towards it.`;
}
