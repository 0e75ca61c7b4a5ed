/**
 * Where a text stops being JSON, in words: "line 3, column 14" or "line 3, near “NaN}”" or "it stops before
 * it is complete". The engine's message is read for the place only, and its own words are not shown.
 */
export function jsonFault(text: string, message: string): string {
  const position = /position (\d+)/.exec(message)?.[1];
  const cutOff = position !== undefined && Number(position) >= text.trimEnd().length;
  if (cutOff || message.includes("end of JSON")) return "it stops before it is complete";
  if (position !== undefined) return lineAndColumn(text, Number(position));
  const quoted = QUOTED.exec(message)?.[1];
  if (quoted === undefined) return "it cannot be read";
  const at = text.indexOf(quoted);
  const near = `near “${quoted.replaceAll(/\s+/g, " ").trim()}”`;
  return at < 0 ? near : `line ${lineOf(text, at)}, ${near}`;
}

/** What stands round a sign that is not expected: Unexpected token 'N', ..."idth": NaN}, "ga"... is not valid JSON */
const QUOTED = /, (?:\.\.\.)?"(.+)"(?:\.\.\.)?(?: is not valid JSON)?$/s;

function lineOf(text: string, position: number): number {
  return text.slice(0, position).split("\n").length;
}

function lineAndColumn(text: string, position: number): string {
  const before = text.slice(0, position).split("\n");
  return `line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1}`;
}
