import type { Mark, TextMark } from "#core/papers";
import type { Faces } from "./faces.ts";
import { inPoints } from "./points.ts";

export type Pen = { readonly document: PDFKit.PDFDocument; readonly faces: Faces };

export function drawMark(mark: Mark, pen: Pen): void {
  const { document } = pen;
  document.save();
  switch (mark.kind) {
    case "line":
      path(document, mark.points, false);
      stroke(document, mark.width, mark.dash);
      break;
    case "shape":
      if (mark.fill !== "none") {
        path(document, mark.points, true);
        document.fill(mark.fill === "ink" ? "black" : "white");
      }
      if (mark.width > 0) {
        path(document, mark.points, true);
        stroke(document, mark.width, mark.dash);
      }
      break;
    case "text":
      text(mark, pen);
      break;
  }
  document.restore();
}

function path(
  document: PDFKit.PDFDocument,
  points: Extract<Mark, { kind: "line" }>["points"],
  closed: boolean,
): void {
  for (const [index, [x, y]] of points.entries()) {
    if (index === 0) document.moveTo(inPoints(x), inPoints(y));
    else document.lineTo(inPoints(x), inPoints(y));
  }
  if (closed) document.closePath();
}

function stroke(document: PDFKit.PDFDocument, width: number, dash: readonly number[] | undefined): void {
  document.lineWidth(inPoints(width)).lineJoin("miter");
  // it takes several lengths in turn; its type declarations know one
  // oxlint-disable-next-line typescript/unbound-method -- bound by apply
  if (dash !== undefined) Reflect.apply(document.dash, document, [dash.map(inPoints), {}]);
  document.stroke("black");
}

function text(mark: TextMark, { document, faces }: Pen): void {
  const runs = faces.runsOf(mark.text, mark.weight).map((run) => {
    document.font(run.face, mark.size);
    return { ...run, width: document.widthOfString(run.text) };
  });
  const width = runs.reduce((sum, it) => sum + it.width, 0);
  const [x, y] = [inPoints(mark.at[0]), inPoints(mark.at[1])];
  if (mark.turn !== 0) document.rotate(mark.turn, { origin: [x, y] });
  let left = x - (mark.anchor === "start" ? 0 : mark.anchor === "middle" ? width / 2 : width);
  if (mark.onPaper === true) {
    document.rect(left - 1.1, y - mark.size * 0.76, width + 2.2, mark.size * 0.95).fill("white");
  }
  document.fillColor("black");
  for (const run of runs) {
    document.font(run.face, mark.size).text(run.text, left, y, { lineBreak: false, baseline: "alphabetic" });
    left += run.width;
  }
}
