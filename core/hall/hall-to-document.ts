import { metresFromMillimetres } from "#core/words";
import type { Point, Polygon } from "#kernels/geometry";
import type { DoorSwing, Hall } from "./hall.ts";
import type { HallDocument } from "./hall-document.ts";

/** What a document tells of a hall beside its floor: address, notes and what it charges. */
export type HallNotes = Pick<
  HallDocument,
  "address" | "notes" | "currency" | "hire" | "arrangement" | "wayWidth"
>;

/** The document of a hall, in metres; `hallFromDocument` gives the same hall back. */
export function hallToDocument(hall: Hall, notes: HallNotes): HallDocument {
  const { mat, gaps, postedCapacity, lengthAlong, middleWidth, ringCentre } = hall;
  return {
    format: "hallful/hall@1",
    name: hall.name,
    outline: corners(hall.outline),
    fixtures: hall.fixtures.map((it) => ({ ...it, outline: corners(it.outline) })),
    keepClear: hall.keepClear.map(({ label, outline, door, place }) => ({
      label,
      outline: corners(outline),
      ...(door === undefined ? {} : { door: leaf(door) }),
      ...(place === undefined ? {} : { place }),
    })),
    teacher: hall.teacher === null ? null : { outline: corners(hall.teacher.outline) },
    mat: { length: metresFromMillimetres(mat.length), width: metresFromMillimetres(mat.width) },
    gaps: {
      side: metresFromMillimetres(gaps.side),
      end: metresFromMillimetres(gaps.end),
      wall: metresFromMillimetres(gaps.wall),
    },
    axis: hall.axis,
    ...(lengthAlong === undefined ? {} : { lengthAlong }),
    ...(middleWidth === undefined ? {} : { middleWidth: metresFromMillimetres(middleWidth) }),
    ...(ringCentre === undefined ? {} : { ringCentre: metrePoint(ringCentre) }),
    ...(postedCapacity === undefined ? {} : { postedCapacity }),
    peopleNotOnMats: hall.peopleNotOnMats,
    ...notes,
  };
}

function corners(outline: Polygon): [number, number][] {
  return outline.map(metrePoint);
}

function leaf({ hinge, closed, open, wayOut }: DoorSwing) {
  const door = { hinge: metrePoint(hinge), closed: metrePoint(closed), open: metrePoint(open) };
  return wayOut === undefined ? door : { ...door, wayOut };
}

function metrePoint([x, y]: Point): [number, number] {
  return [metresFromMillimetres(x), metresFromMillimetres(y)];
}
