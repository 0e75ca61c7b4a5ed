import { formatLength, type LengthUnits } from "#core/words";
import type { SetOut, SetOutLine, SetOutString, StringEnd } from "./mat-plan-types.ts";

/** The set-out as sentences, one a line, in metres or in feet and inches; an empty plan has one that says so. */
export function setOutSentences(setOut: Omit<SetOut, "sentences">, units: LengthUnits): readonly string[] {
  const { lines } = setOut;
  if (lines.length === 0) return ["There is no mat to set out."];
  const said = (millimetres: number): string => lengthSaid(millimetres, setOut.toTheCentimetre, units);
  const pitch = smallestStep(lines);
  return [
    openingSentence(setOut),
    ...(setOut.string === null ? [] : [stringSentence(setOut.string, units)]),
    ...lines.map((line, index) => lineSentence(line, index + 1, setOut, pitch, said)),
    ...(units === "feet"
      ? ["Feet and inches are to the nearest quarter inch; the figures in metres are exact."]
      : []),
  ];
}

function openingSentence({
  lengthLies,
  linesFrom,
  string,
  matsAlongEdge,
}: Omit<SetOut, "sentences">): string {
  const square = string === null ? "" : ", square to the lines,";
  const edge = matsAlongEdge ? ", and mats along that edge" : "";
  return `Every mat lies with its length ${lengthLies}. Lines are measured from ${linesFrom}${square} to the nearest edge of their mats${edge}.`;
}

function stringSentence({ from, to }: SetOutString, units: LengthUnits): string {
  const end = ({ wall, corner, distance }: StringEnd): string =>
    `${wall}, ${lengthSaid(distance, distance % 10 === 0, units)} from corner ${corner}`;
  return `For the near edge of line 1 stretch a string from ${end(from)}, to ${end(to)}; the other lines run alongside it.`;
}

/** Metres with three decimals where a plan is not in whole centimetres, so that the figure is not short. */
function lengthSaid(millimetres: number, toTheCentimetre: boolean, units: LengthUnits): string {
  if (units === "metric" && !toTheCentimetre) return `${(millimetres / 1000).toFixed(3)} m`;
  return formatLength(millimetres, units);
}

function lineSentence(
  line: SetOutLine,
  number: number,
  { linesFrom }: Pick<SetOut, "linesFrom">,
  pitch: number,
  said: (millimetres: number) => string,
): string {
  const [first = [], ...later] = runsOf(line.centres, pitch);
  const half = (line.centres[0] ?? 0) - line.first;
  const head = `Line ${number}: ${said(line.from)} from ${linesFrom}.`;
  const start = `First mat starts ${said(line.first)} from ${line.matsFrom}`;
  const rest = later.map(
    (run) =>
      ` Past a space the next mat starts ${said((run[0] ?? 0) - half)} from there${runSaid(run, said)}.`,
  );
  return `${head} ${start}${runSaid(first, said)}.${rest.join("")}`;
}

function runSaid(run: readonly number[], said: (millimetres: number) => string): string {
  const [one = 0, two] = run;
  if (two === undefined) return "; 1 mat";
  return `; then centres every ${said(two - one)}; ${run.length} mats`;
}

/** The least step between centres of one line: what mats side by side have. */
function smallestStep(lines: readonly SetOutLine[]): number {
  const steps = lines.flatMap(({ centres }) =>
    centres.slice(1).map((at, index) => at - (centres[index] ?? at)),
  );
  return Math.min(...steps, Infinity);
}

/** Centres that follow one another by the pitch (to the millimetre) are one run; a wider step begins another. */
function runsOf(centres: readonly number[], pitch: number): readonly (readonly number[])[] {
  const runs: number[][] = [];
  for (const [index, at] of centres.entries()) {
    const before = centres[index - 1];
    const run = runs.at(-1);
    if (run === undefined || before === undefined || at - before > pitch + 1) runs.push([at]);
    else run.push(at);
  }
  return runs;
}
