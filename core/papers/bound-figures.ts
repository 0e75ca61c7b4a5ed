const BOUND = "\u00A0";

/**
 * The text with spaces that bind a figure to its unit, feet to inches and inches to their fraction: "2 ft 10" at the
 * end of a line reads as a length.
 */
export function boundFigures(text: string): string {
  return text
    .replace(/(\d) (?=(?:ft|in|m|pt)\b|\d\/\d)/g, `$1${BOUND}`)
    .replace(/\bft (?=\d)/g, `ft${BOUND}`)
    .replace(/ × /g, `${BOUND}×${BOUND}`);
}
