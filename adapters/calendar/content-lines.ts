/** A line of a calendar file as RFC 5545, 3.1 writes it: "DTSTART;TZID=Europe/London:20270112T183000". */
export type ContentLine = {
  readonly name: string;
  readonly parameters: ReadonlyMap<string, string>;
  readonly value: string;
  /** the line of the file on which it begins, from 1 */
  readonly line: number;
};

/** The lines of a file with those that were folded joined again; an empty line is none. One after the other. */
export function* contentLines(text: string): Generator<ContentLine> {
  let joined = "";
  let begun = 0;
  let line = 0;
  for (const raw of rawLines(text)) {
    line += 1;
    if (raw.startsWith(" ") || raw.startsWith("\t")) {
      // a folded line as long as a book is no line: what is cut off is no date
      if (joined.length < LONGEST) joined += raw.slice(1);
      continue;
    }
    if (joined !== "") yield parsed(joined, begun);
    joined = raw;
    begun = line;
  }
  if (joined !== "") yield parsed(joined, begun);
}

const LONGEST = 100_000;

function* rawLines(text: string): Generator<string> {
  let from = 0;
  while (from < text.length) {
    const at = text.indexOf("\n", from);
    const end = at === -1 ? text.length : at;
    // lines end with CR and LF, in files that an editor has been at with one of them
    for (const piece of text.slice(from, end).split("\r")) if (piece !== "") yield piece;
    if (end === from) yield "";
    from = end + 1;
  }
}

function parsed(line: string, begun: number): ContentLine {
  const colon = endOfName(line);
  const [name = "", ...rest] = parts(line.slice(0, colon));
  const parameters = rest.map((it) => {
    const at = it.indexOf("=");
    return [it.slice(0, at).toUpperCase(), it.slice(at + 1).replaceAll('"', "")] as const;
  });
  return {
    name: name.toUpperCase(),
    parameters: new Map(parameters),
    value: line.slice(colon + 1),
    line: begun,
  };
}

/** The first colon that stands in no quotes. */
function endOfName(line: string): number {
  let quoted = false;
  for (let at = 0; at < line.length; at += 1) {
    if (line[at] === '"') quoted = !quoted;
    else if (line[at] === ":" && !quoted) return at;
  }
  return line.length;
}

function parts(head: string): readonly string[] {
  return head.includes('"') ? (head.match(/(?:[^;"]|"[^"]*"?)+/g) ?? []) : head.split(";");
}
