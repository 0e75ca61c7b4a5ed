import type { Mark, PaperPart } from "#core/papers";
import { PaperMarks } from "./paper-marks.tsx";

/** The drawing of a paper by itself, as large as the page allows, read aloud as the paper says it. */
export function PaperFigure({ part }: { readonly part: PaperPart }) {
  const [left, top, right, bottom] = boundsOf(part.marks);
  return (
    <svg
      className="paper-figure"
      viewBox={`${left} ${top} ${right - left} ${bottom - top}`}
      role="img"
      aria-label={part.says}
    >
      <PaperMarks marks={part.marks} />
    </svg>
  );
}

/** With room for the words at the edge: left, top, right, bottom. */
function boundsOf(marks: readonly Mark[]): readonly [number, number, number, number] {
  const points = marks.flatMap((mark) => (mark.kind === "text" ? [mark.at] : mark.points));
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs) - 3, Math.min(...ys) - 3, Math.max(...xs) + 3, Math.max(...ys) + 3];
}
