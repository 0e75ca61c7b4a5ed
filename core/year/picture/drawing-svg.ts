import type { Drawing, Shape } from "./shape.ts";

/** A drawing as a file of its own, in millimetres, black on white, with what it shows in words as its description. */
export function drawingSvg(
  { width, height, shapes }: Drawing,
  title: string,
  words: readonly string[],
): string {
  const size = `width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" font-family="sans-serif">`,
    `<title>${escaped(title)}</title>`,
    `<desc>${escaped(words.join("\n"))}</desc>`,
    `<rect width="${width}" height="${height}" fill="white"/>`,
    ...shapes.map(shapeSvg),
    "</svg>",
    "",
  ].join("\n");
}

function shapeSvg(shape: Shape): string {
  switch (shape.kind) {
    case "box": {
      const { x, y, width, height, filled, line } = shape;
      const paint = `fill="${filled ? "black" : "none"}" stroke="black" stroke-width="${line}"`;
      return `<rect x="${rounded(x)}" y="${rounded(y)}" width="${rounded(width)}" height="${rounded(height)}" ${paint}/>`;
    }
    case "line": {
      const [[x1, y1], [x2, y2]] = [shape.from, shape.to];
      const dash = shape.dashed ? ' stroke-dasharray="1.2 0.9"' : "";
      return `<line x1="${rounded(x1)}" y1="${rounded(y1)}" x2="${rounded(x2)}" y2="${rounded(y2)}" stroke="black" stroke-width="${shape.line}"${dash}/>`;
    }
    case "corner": {
      const { x, y, size } = shape;
      return `<path d="M${rounded(x - size)} ${rounded(y)}H${rounded(x)}V${rounded(y + size)}Z" fill="black"/>`;
    }
    case "text": {
      const weight = shape.bold ? ' font-weight="bold"' : "";
      return `<text x="${rounded(shape.x)}" y="${rounded(shape.y)}" font-size="${shape.size}" text-anchor="${shape.anchor}"${weight}>${escaped(shape.text)}</text>`;
    }
  }
}

/** Hundredths of a millimetre, without the noise of sums. */
function rounded(value: number): string {
  return String(Math.round(value * 100) / 100);
}

const ENTITIES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

function escaped(text: string): string {
  // control signs are not allowed in XML at all
  // oxlint-disable-next-line no-control-regex -- these very signs are taken out
  const plain = text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, "");
  return plain.replace(/[&<>"]/g, (sign) => ENTITIES[sign] ?? sign);
}
