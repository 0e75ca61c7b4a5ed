import { type Point, rotateAboutOrigin } from "#kernels/geometry";
import { mustBeAllowed } from "../allowed-lines.ts";
import type { Hall } from "../hall.ts";
import { type HallFrame, hallFrame, wallInWords } from "../hall-frame.ts";
import { lengthInWords } from "../length-in-words.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { floorToFill } from "../mat-plan.ts";
import { dot, scaled } from "../vectors.ts";
import { measurePlace, type TapeFigure, type TapeFrame, tapeFrame } from "./measure-place.ts";
import type { PlaceGroup, PlacesSetOut } from "./places-set-out-types.ts";
import { placesSentences } from "./places-sentences.ts";
import { plainlyNamed, stretchedStrings } from "./stretched-strings.ts";
import { wholePlaces } from "./whole-places.ts";

type Measured = { readonly mat: PlacedMat; readonly out: TapeFigure; readonly along: TapeFigure };

/**
 * Mats along an axis or across it, in the order in which a person lays them, and the figures for the tape: row by row
 * from the front, or file by file from the left where that is told in fewer sentences. On whole centimetres where
 * that is allowed, else to the millimetre. `axis` in degrees from +x. Throws where the plan breaks its own rules.
 */
export function setOutPlaces(
  hall: Hall,
  axis: number,
  exact: readonly PlacedMat[],
): { readonly mats: readonly PlacedMat[]; readonly placesSetOut: PlacesSetOut } {
  const frame = hallFrame(hall);
  const ways = waysToMeasure(hall, frame, axis, exact);
  const floor = floorToFill(hall);
  const mats = wholePlaces(hall, floor, exact, ways) ?? exact;
  mustBeAllowed(hall, floor, mats);
  const grouped = fewestGroups(mats.map((mat) => measuredPlace(hall, mat, ways)));
  const groups = placeGroups(hall, frame, grouped);
  const toTheCentimetre = groups.every((it) => [it.out, ...it.places.map((at) => at.along)].every(isWhole));
  const used = new Set(grouped.flat().flatMap((it) => [it.out.from, it.along.from]));
  const strings = stretchedStrings(hall, frame, ways, exact, used);
  const figured = { toTheCentimetre, ...plainlyNamed(strings, groups) };
  const sentences = placesSentences(figured, "metric");
  return { mats: grouped.flat().map((it) => it.mat), placesSetOut: { ...figured, sentences } };
}

/** Rows, or files where there are fewer of those; `out` is the figure that a group shares. */
function fewestGroups(rows: readonly Measured[]): readonly (readonly Measured[])[] {
  const files = rows.map(({ mat, out, along }) => ({ mat, out: along, along: out }));
  const [byRow, byFile] = [groupsOf(rows), groupsOf(files)];
  return byFile.length < byRow.length ? byFile : byRow;
}

function isWhole(figure: number): boolean {
  return figure % 10 === 0;
}

/** Away from the front and along to the right, as far as the axis lets it. */
function waysToMeasure(
  { mat }: Hall,
  { front, right }: HallFrame,
  axis: number,
  mats: readonly PlacedMat[],
): TapeFrame {
  const run = rotateAboutOrigin([1, 0], axis);
  const square: Point = [0 - run[1], run[0]];
  const across = Math.abs(dot(square, front)) >= Math.abs(dot(run, front)) - 1e-9;
  const [along, away] = across ? [run, square] : [square, run];
  return tapeFrame(mat, mats, towards(along, right), towards(away, scaled(front, -1)));
}

function towards(way: Point, wished: Point): Point {
  return dot(way, wished) < 0 ? [0 - way[0], 0 - way[1]] : way;
}

function measuredPlace({ outline, mat }: Hall, placed: PlacedMat, { along, away }: TapeFrame): Measured {
  return {
    mat: placed,
    out: measurePlace(outline, mat, placed, away),
    along: measurePlace(outline, mat, placed, along),
  };
}

/** By the first wall and how far from it, then by how the mat lies, then by the other wall and how far from that. */
function inOrder(one: Measured, other: Measured): number {
  return (
    order(one.out.from) - order(other.out.from) ||
    Math.round(one.out.figure) - Math.round(other.out.figure) ||
    one.mat.angle - other.mat.angle ||
    order(one.along.from) - order(other.along.from) ||
    one.along.figure - other.along.figure
  );
}

/** Strings first: they have to lie before anything is measured from them. */
function order(from: TapeFigure["from"]): number {
  return typeof from === "number" ? from : -1;
}

function groupsOf(measured: readonly Measured[]): readonly (readonly Measured[])[] {
  const groups: Measured[][] = [];
  for (const it of [...measured].sort(inOrder)) {
    const before = groups.at(-1);
    if (before?.[0] !== undefined && sharesFigure(before[0], it)) before.push(it);
    else groups.push([it]);
  }
  return groups;
}

function placeGroups(
  { outline }: Hall,
  frame: HallFrame,
  groups: readonly (readonly Measured[])[],
): readonly PlaceGroup[] {
  const side = ({ from }: TapeFigure): string =>
    typeof from === "number" ? wallInWords(outline, frame, from) : from;
  let number = 0;
  return groups.flatMap((group): readonly PlaceGroup[] => {
    const [first] = group;
    if (first === undefined) return [];
    return [
      {
        lengthLies: lengthInWords(outline, frame, first.mat.angle),
        outFrom: side(first.out),
        out: Math.round(first.out.figure) + 0,
        alongFrom: side(first.along),
        places: group.map(({ along }) => ({ number: ++number, along: Math.round(along.figure) + 0 })),
      },
    ];
  });
}

function sharesFigure(one: Measured, other: Measured): boolean {
  return (
    one.out.from === other.out.from &&
    Math.round(one.out.figure) === Math.round(other.out.figure) &&
    one.mat.angle === other.mat.angle &&
    one.along.from === other.along.from
  );
}
