import type { Point, Polygon } from "#kernels/geometry";
import {
  bad,
  good,
  millimetresFromMetres,
  type Problem,
  problem,
  type Result,
  readDocument,
} from "#core/words";
import { floorProblems } from "./check-floor.ts";
import { gapProblems, matProblems, numberProblems } from "./check-mats.ts";
import { layingProblems } from "./check-laying.ts";
import type { DoorSwing, Hall } from "./hall.ts";
import { type HallDocument, hallDocumentSchema } from "./hall-document.ts";

/**
 * A sound hall from whatever was given, or every problem with it: those of `readDocument`, or else those of
 * `hallFromDocument`. Who wants to tell of misspelt keys calls these two in turn.
 */
export function readHall(input: unknown): Result<Hall> {
  const document = readDocument(hallDocumentSchema, input);
  return document.ok ? hallFromDocument(document.value.value) : document;
}

/**
 * The hall of a document, lengths rounded to the millimetre. Problems: "hall-name-empty" and those of
 * `floorProblems`, `matProblems`, `gapProblems`, `numberProblems` and `layingProblems`. Hire terms are not looked at.
 */
export function hallFromDocument(document: HallDocument): Result<Hall> {
  const hall = unchecked(document);
  const floor = floorProblems(hall);
  const soundOutline = floor.some(({ place }) => place.startsWith("outline")) ? undefined : hall.outline;
  const problems = [
    ...nameProblems(hall.name),
    ...floor,
    ...matProblems(hall.mat, hall.gaps, soundOutline),
    ...gapProblems(hall.gaps),
    ...numberProblems(hall),
    ...layingProblems(hall, soundOutline),
  ];
  return problems.length === 0 ? good(hall) : bad(...problems);
}

function nameProblems(name: string): readonly Problem[] {
  if (name !== "") return [];
  return [problem("hall-name-empty", "name", "The hall has no name.", "Give it the name that people use.")];
}

function unchecked(document: HallDocument): Hall {
  const { mat, gaps, teacher, lengthAlong, middleWidth, ringCentre } = document;
  return {
    name: document.name.trim(),
    outline: polygon(document.outline),
    fixtures: document.fixtures.map(({ label, outline, movable }) => ({
      label: label.trim(),
      outline: polygon(outline),
      movable: movable ?? false,
    })),
    keepClear: document.keepClear.map(({ label, outline, door, place }) => ({
      label: label.trim(),
      outline: polygon(outline),
      ...(door === undefined ? {} : { door: doorLeaf(door) }),
      ...(place === undefined ? {} : { place }),
    })),
    teacher: teacher === null ? null : { outline: polygon(teacher.outline) },
    mat: { length: millimetresFromMetres(mat.length), width: millimetresFromMetres(mat.width) },
    gaps: {
      side: millimetresFromMetres(gaps.side),
      end: millimetresFromMetres(gaps.end),
      wall: millimetresFromMetres(gaps.wall),
    },
    axis: document.axis,
    ...(lengthAlong === undefined ? {} : { lengthAlong }),
    ...(middleWidth === undefined ? {} : { middleWidth: millimetresFromMetres(middleWidth) }),
    ...(ringCentre === undefined ? {} : { ringCentre: point(ringCentre) }),
    postedCapacity: document.postedCapacity,
    peopleNotOnMats: document.peopleNotOnMats ?? 1,
  };
}

type DoorDocument = NonNullable<HallDocument["keepClear"][number]["door"]>;

function polygon(corners: readonly Point[]): Polygon {
  return corners.map(point);
}

function doorLeaf({ hinge, closed, open, wayOut }: DoorDocument): DoorSwing {
  const leaf = { hinge: point(hinge), closed: point(closed), open: point(open) };
  return wayOut === undefined ? leaf : { ...leaf, wayOut };
}

/** Adding 0 turns −0 into 0, so that equal places are equal to every comparison. */
function point([x, y]: Point): Point {
  return [millimetresFromMetres(x) + 0, millimetresFromMetres(y) + 0];
}
