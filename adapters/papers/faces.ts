import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { isWritable, type Weight } from "#core/papers";
import { z } from "zod";

/** A stretch of text that one file of the face has all letters of. */
export type Run = { readonly text: string; readonly face: string };

export type Faces = {
  /** every file, under the name that runs call it by */
  readonly files: readonly { readonly name: string; readonly data: Buffer }[];
  readonly runsOf: (text: string, weight: Weight) => readonly Run[];
};

/** The face comes in two files: the letters of the west of Europe, and those of its other languages. */
const parts = ["latin", "latin-ext"] as const;
type Part = (typeof parts)[number];
const weights: Readonly<Record<Weight, number>> = { regular: 400, bold: 700 };

/** What stands for a letter that the face has not. */
const MISSING = "?";

/** The face that papers are set in, read from its package. */
export function openFaces(): Faces {
  const files = (["regular", "bold"] as const).flatMap((weight) =>
    parts.map((part) => ({
      name: `${weight} ${part}`,
      data: packageFile(`files/atkinson-hyperlegible-next-${part}-${weights[weight]}-normal.woff`),
    })),
  );
  const isWestern = westernLetters();
  const partOf = (letter: string): Part => (isWestern(letter.codePointAt(0) ?? 0) ? "latin" : "latin-ext");
  const runsOf = (text: string, weight: Weight): readonly Run[] => {
    const runs: { text: string; face: string }[] = [];
    for (const asked of text) {
      const letter = isWritable(asked) ? asked : MISSING;
      const face = `${weight} ${partOf(letter)}`;
      const run = runs.at(-1);
      if (run?.face === face) run.text += letter;
      else runs.push({ text: letter, face });
    }
    return runs;
  };
  return { files, runsOf };
}

/** Found from the place of the source as well as from that of the bundle, which lie below the packages. */
function packageFile(path: string): Buffer {
  const { resolve } = createRequire(import.meta.url);
  return readFileSync(resolve(`@fontsource/atkinson-hyperlegible-next/${path}`));
}

/** The package tells which letters its files are for: "U+0000-00FF,U+0131,U+0152-0153". */
function westernLetters(): (code: number) => boolean {
  const { latin } = z.object({ latin: z.string() }).parse(JSON.parse(packageFile("unicode.json").toString()));
  const spans = latin.split(",").map((range) => {
    const [from = "", to = from] = range.replace("U+", "").split("-");
    return [Number.parseInt(from, 16), Number.parseInt(to, 16)] as const;
  });
  return (code) => spans.some(([from, to]) => from <= code && code <= to);
}
