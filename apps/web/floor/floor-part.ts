// Example: a document with a corner at [4.2, 0] and a mat of 1.83 m gives the corner [4200, 0] and 1830 mm.
// Invariant: a part laid back into the document it came from changes nothing but lengths finer than a millimetre.
import {
  type FloorDraft,
  type Hall,
  type HallDocument,
  hallToDocument,
  type Mat,
  type MatGaps,
} from "#core/hall";
import { type Millimetres, millimetresFromMetres } from "#core/words";
import type { Point, Polygon } from "#kernels/geometry";

/** What the floor editor changes of a hall's document, and what undo brings back: nothing else. Millimetres. */
export type FloorPart = FloorDraft & {
  readonly mat: Mat;
  readonly gaps: MatGaps;
  readonly axis: number | "auto";
  /** degrees from +x; absent where mats lie whichever way holds more */
  readonly lengthAlong?: number;
  readonly middleWidth?: Millimetres;
  readonly ringCentre?: Point;
};

/** Nothing is refused: a floor with crossing walls is drawn too, so that it can be mended. */
export function floorPartOf(document: HallDocument): FloorPart {
  const { mat, gaps, middleWidth, ringCentre } = document;
  return {
    outline: inMillimetres(document.outline),
    fixtures: document.fixtures.map((it) => ({
      label: it.label,
      outline: inMillimetres(it.outline),
      movable: it.movable ?? false,
    })),
    keepClear: document.keepClear.map(({ label, outline, door, place }) => ({
      label,
      outline: inMillimetres(outline),
      ...(door === undefined
        ? {}
        : {
            door: {
              hinge: pointInMillimetres(door.hinge),
              closed: pointInMillimetres(door.closed),
              open: pointInMillimetres(door.open),
              ...(door.wayOut === undefined ? {} : { wayOut: door.wayOut }),
            },
          }),
      ...(place === undefined ? {} : { place }),
    })),
    teacher: document.teacher === null ? null : { outline: inMillimetres(document.teacher.outline) },
    mat: { length: millimetres(mat.length), width: millimetres(mat.width) },
    gaps: { side: millimetres(gaps.side), end: millimetres(gaps.end), wall: millimetres(gaps.wall) },
    axis: document.axis,
    ...(document.lengthAlong === undefined ? {} : { lengthAlong: document.lengthAlong }),
    ...(middleWidth === undefined ? {} : { middleWidth: millimetres(middleWidth) }),
    ...(ringCentre === undefined ? {} : { ringCentre: pointInMillimetres(ringCentre) }),
  };
}

/** The document with the floor part in it; name, hire and all else as they were. */
export function withFloorPart(document: HallDocument, part: FloorPart): HallDocument {
  const hall: Hall = { ...part, name: document.name, postedCapacity: undefined, peopleNotOnMats: 1 };
  const {
    format: _format,
    name: _name,
    postedCapacity: _p,
    peopleNotOnMats: _n,
    ...floor
  } = hallToDocument(hall, {});
  const { lengthAlong: _length, middleWidth: _middle, ringCentre: _centre, ...rest } = document;
  return { ...rest, ...floor, ...seatedToo(document, part) };
}

/** Who sits in a place for a wheelchair or a chair is one person more who is not on a mat, and goes with it. */
function seatedToo(document: HallDocument, part: FloorPart): Pick<HallDocument, "peopleNotOnMats"> {
  const more = baysIn(part.keepClear) - baysIn(document.keepClear);
  return more === 0 ? {} : { peopleNotOnMats: Math.max(0, (document.peopleNotOnMats ?? 1) + more) };
}

function baysIn(zones: HallDocument["keepClear"] | FloorPart["keepClear"]): number {
  return zones.filter((it) => it.place?.part === "bay").length;
}

/** What the editor may change, out of a whole hall: to make a hall that was tried the one that is drawn. */
export function partOfHall(hall: Hall): FloorPart {
  const { name: _, postedCapacity: __, peopleNotOnMats: ___, ...part } = hall;
  return part;
}

export function samePart(a: FloorPart, b: FloorPart): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

function inMillimetres(outline: readonly Point[]): Polygon {
  return outline.map(pointInMillimetres);
}

function pointInMillimetres([x, y]: Point): Point {
  return [millimetres(x), millimetres(y)];
}

/** A number that is no number is drawn at 0; reading the document says what is wrong with it. */
function millimetres(count: number): Millimetres {
  return millimetresFromMetres(Number.isFinite(count) ? count : 0);
}
