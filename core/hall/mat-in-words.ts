import type { PlacedMat, SetOut, SetOutLine } from "./mat-plan-types.ts";

/** Any plan of mats; with lines in the order of the mats, a mat has the name that the set-out gives it. */
export type NamedMats = {
  readonly mats: readonly PlacedMat[];
  readonly setOut?: Pick<SetOut, "linesFrom"> & {
    readonly lines: readonly Pick<SetOutLine, "centres" | "matsFrom">[];
  };
  /** with rings in the order of the mats, a mat has the name that the set-out of rings gives it */
  readonly ringSetOut?: { readonly rings: readonly { readonly marks: readonly unknown[] }[] };
};

/** Line (or ring) and place count from 1; a plan with neither has line 0 and numbers its mats through. */
export type MatPlace = { readonly line: number; readonly place: number };

/** "mat 3 of line 2" or "mat 3 of ring 2", as in the set-out; "mat 17" in a plan that has neither. */
export function matInWords(plan: NamedMats, mat: number): string {
  const { line, place } = placeOfMat(plan, mat);
  return line === 0 ? `mat ${place}` : `mat ${place} of ${rowWord(plan)} ${line}`;
}

function rowWord({ ringSetOut }: NamedMats): "line" | "ring" {
  return ringSetOut === undefined ? "line" : "ring";
}

/** Throws for a mat that the plan does not have. */
export function placeOfMat(plan: NamedMats, mat: number): MatPlace {
  if (plan.mats[mat] === undefined) throw new RangeError(`no mat ${mat} among ${plan.mats.length}`);
  let before = 0;
  for (const [row, size] of rowSizes(plan).entries()) {
    if (mat < before + size) return { line: row + 1, place: mat - before + 1 };
    before += size;
  }
  return { line: 0, place: mat + 1 };
}

/** "mats 2 to 5 and 7 of line 3; mat 1 of line 4": each line once, in the order of the plan. */
export function matsInWords(plan: NamedMats, mats: readonly number[]): string {
  const byLine = new Map<number, number[]>();
  for (const mat of mats.toSorted((a, b) => a - b)) {
    const { line, place } = placeOfMat(plan, mat);
    byLine.set(line, [...(byLine.get(line) ?? []), place]);
  }
  return [...byLine].map(([line, places]) => lineOfMats(line, places, rowWord(plan))).join("; ");
}

/** From where lines and mats are counted, as a sentence; none for a plan with neither lines nor rings. */
export function countedFrom(plan: NamedMats): readonly string[] {
  const lines = linesIn(plan);
  if (plan.ringSetOut !== undefined)
    return ["Rings are counted from the inside, the mats of each as in the set-out."];
  const [first] = lines;
  if (plan.setOut === undefined || first === undefined) return [];
  const same = lines.every((line) => line.matsFrom === first.matsFrom);
  const mats = same ? `the mats of each from ${first.matsFrom}` : "the mats of each as in the set-out";
  return [`Lines are counted from ${plan.setOut.linesFrom}, ${mats}.`];
}

/** The lines, where they name every mat. */
function linesIn({ mats, setOut }: NamedMats): readonly Pick<SetOutLine, "centres" | "matsFrom">[] {
  const lines = setOut?.lines ?? [];
  return lines.reduce((sum, line) => sum + line.centres.length, 0) === mats.length ? lines : [];
}

function rowSizes(plan: NamedMats): readonly number[] {
  const { ringSetOut } = plan;
  return ringSetOut === undefined
    ? linesIn(plan).map((line) => line.centres.length)
    : ringSetOut.rings.map((ring) => ring.marks.length);
}

function lineOfMats(line: number, places: readonly number[], row: "line" | "ring"): string {
  const runs = runsOf(places).map((run) => (run.length < 3 ? run.join(", ") : `${run[0]} to ${run.at(-1)}`));
  const parts = runs.join(", ").split(", ");
  const [last] = parts.slice(-1);
  const listed = parts.length === 1 ? last : `${parts.slice(0, -1).join(", ")} and ${last}`;
  const mats = `${places.length === 1 ? "mat" : "mats"} ${listed}`;
  return line === 0 ? mats : `${mats} of ${row} ${line}`;
}

/** Places that follow one another by one are a run. */
function runsOf(places: readonly number[]): readonly (readonly number[])[] {
  const runs: number[][] = [];
  for (const place of places) {
    const run = runs.at(-1);
    if (run !== undefined && run.at(-1) === place - 1) run.push(place);
    else runs.push([place]);
  }
  return runs;
}
