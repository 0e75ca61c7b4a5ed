import { counted, shortDecimal } from "../opening/opening-words.ts";
import type { DemandBehind } from "./demand-behind.ts";

/** The answer first: how many want to come, then who is turned away, and how far that can be trusted. */
export function demandSentences(found: DemandBehind): readonly string[] {
  return [
    meanSentence(found),
    turnedAwaySentence(found),
    ...(found.atLeast ? [atLeastSentence(found)] : []),
    ...(found.sessions < FEW ? [fewSentence(found.sessions)] : []),
    ...(found.uncounted > 0
      ? ["Regulars make heads less uneven than chance would, so this is rather the upper side of a guess."]
      : []),
  ];
}

/** Below four data points nothing is advised. */
const FEW = 4;

function meanSentence({ mean, low, high, atLeast, sessions }: DemandBehind): string {
  const about = atLeast ? "At least about" : "About";
  const band = `eight chances of ten: ${shortDecimal(low)} to ${shortDecimal(high)}`;
  return `${about} ${shortDecimal(mean)} people want to come to a session (${band}), by ${counted(sessions, "session")}.`;
}

function turnedAwaySentence({
  full,
  sessions,
  turnedAway,
  turnedAwayLow,
  turnedAwayHigh,
}: DemandBehind): string {
  if (full === 0) return "None of them was full, so nobody is known to have stayed away for want of a place.";
  const band = `${shortDecimal(turnedAwayLow)} to ${shortDecimal(turnedAwayHigh)}`;
  const were = full === 1 ? "was" : "were";
  return `${full} of ${sessions} ${were} full: about ${shortDecimal(turnedAway)} people a session found no place (${band}).`;
}

function atLeastSentence({ uncounted, sessions }: DemandBehind): string {
  const all = uncounted === sessions ? "Every session was full" : "More than four sessions of five were full";
  return `${all}: heads alone cannot tell how many more would come; count whom you turn away.`;
}

function fewSentence(sessions: number): string {
  return `${counted(sessions, "session")} ${sessions === 1 ? "is" : "are"} too few to decide anything on.`;
}
