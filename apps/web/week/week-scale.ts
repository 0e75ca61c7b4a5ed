import type { WeekDrawing } from "#app/views";

export type WeekScale = {
  readonly width: number;
  readonly height: number;
  /** room for the hours at the left */
  readonly left: number;
  readonly column: number;
  /** whether a column has room for names; else its boxes have numbers only */
  readonly named: boolean;
  /** hours with a line, from the first on */
  readonly hours: readonly number[];
  /** left edge of a weekday's column, 1 is Monday */
  readonly x: (weekday: number) => number;
  readonly y: (minutes: number) => number;
};

const LEFT = 48;
const TOP = 26;
const FOOT = 10;
const GAP = 4;

/** Where everything of a week's picture stands, in pixels of a drawing `width` wide. */
export function weekScale({ from, until }: Pick<WeekDrawing, "from" | "until">, width: number): WeekScale {
  const each = (width - LEFT) / 7;
  const named = each >= 84;
  const hour = named ? 38 : 26;
  const [first, last] = [from / 60, until / 60];
  return {
    width,
    height: TOP + (last - first) * hour + FOOT,
    left: LEFT,
    column: each - GAP,
    named,
    hours: Array.from({ length: last - first + 1 }, (_, at) => first + at),
    x: (weekday) => LEFT + (weekday - 1) * each + GAP,
    y: (minutes) => TOP + ((minutes - from) / 60) * hour,
  };
}

/** Words in lines of so many letters, at most so many lines; what has no room ends in "…". */
export function wrapped(text: string, letters: number, lines: number): readonly string[] {
  const all: string[] = [];
  for (const word of text.split(" ")) {
    const last = all.at(-1);
    if (last !== undefined && last.length + word.length + 1 <= letters)
      all[all.length - 1] = `${last} ${word}`;
    else all.push(word);
  }
  const cut = all.map((line) =>
    line.length > letters ? `${line.slice(0, Math.max(1, letters - 1))}…` : line,
  );
  if (cut.length <= lines) return cut;
  const kept = cut.slice(0, lines);
  const end = kept.at(-1) ?? "";
  return [...kept.slice(0, -1), end.length + 1 > letters ? `${end.slice(0, -1)}…` : `${end}…`];
}
