import type { Mark, Paper, TextMark } from "#core/papers";

/** Everything that stands on a paper, on all its pages. */
export function marksOf(paper: Paper): readonly Mark[] {
  return paper.pages.flatMap(({ parts }) => parts.flatMap((it) => it.marks));
}

/** What the drawing of a paper is made of. */
export function figureOf(paper: Paper): readonly Mark[] {
  return paper.pages.flatMap(({ parts }) =>
    parts.filter((it) => it.role === "figure").flatMap((it) => it.marks),
  );
}

export function textsOf(marks: readonly Mark[]): readonly TextMark[] {
  return marks.filter((mark) => mark.kind === "text");
}

/** The words of the whole paper but the drawing's, without the breaks of lines. */
export function wordsOfPaper(paper: Paper): string {
  const said = paper.pages.flatMap(({ parts }) =>
    parts.filter((it) => it.role !== "figure").map((it) => it.says),
  );
  return said.join(" ");
}
