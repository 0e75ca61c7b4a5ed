import {
  addFixture,
  addKeepClear,
  freeSpot,
  hangDoor,
  placeTeacher,
  rectangleAt,
  teacherStrip,
  wallsOf,
} from "#core/hall";
import { openList } from "./open-row.ts";
import type { FloorPart } from "./floor-part.ts";
import { changed } from "./handle.ts";
import type { FloorHistory } from "./use-floor-history.ts";

/** A door leaf of 0.90 m is common practice, no source; a fixture starts as a metre square. */
const DOOR_WIDTH = 900;
const METRE = 1000;

const things = [
  { word: "Fixture", add: withFixture },
  { word: "Keep-clear zone", add: withZone },
  { word: "Door", add: withDoor },
  { word: "Teacher’s place", add: withTeacher },
] as const;

/** Buttons that put a new thing on a free place of the floor, to be drawn or typed to where it is. */
export function AddThings({ floor }: { readonly floor: FloorHistory }) {
  const part = floor.shown;
  return (
    <div className="row no-print">
      <span>Add to the floor:</span>
      {things.map(({ word, add }) => (
        <button
          key={word}
          type="button"
          className="button"
          disabled={word === "Teacher’s place" && part.teacher !== null}
          onClick={() => {
            floor.settle(add(part));
            openList();
          }}
        >
          {word}
        </button>
      ))}
    </div>
  );
}

function withFixture(part: FloorPart): FloorPart {
  const outline = rectangleAt(freeSpot(part, METRE, METRE), METRE, METRE);
  return changed(part, addFixture(part, { label: "Fixture", outline, movable: false }));
}

function withZone(part: FloorPart): FloorPart {
  const outline = rectangleAt(freeSpot(part, METRE, METRE), METRE, METRE);
  return changed(part, addKeepClear(part, { label: "Keep clear", outline }));
}

/** In the middle of the first wall that is long enough; the floor as it was where none is. */
function withDoor(part: FloorPart): FloorPart {
  const walls = wallsOf(part.outline);
  const wall = walls.findIndex((it) => it.length >= DOOR_WIDTH);
  const hingeAt = Math.round(((walls[wall]?.length ?? 0) - DOOR_WIDTH) / 20) * 10;
  const zone = wall < 0 ? null : hangDoor(part, { wall, hingeAt, width: DOOR_WIDTH, reaches: "on" });
  return zone === null ? part : changed(part, addKeepClear(part, zone));
}

/** Along the wall highest on the drawing, where the front of a hall is usually drawn. */
function withTeacher(part: FloorPart): FloorPart {
  const heights = wallsOf(part.outline).map((it) => it.from[1] + it.to[1]);
  const wall = heights.indexOf(Math.max(...heights));
  return changed(part, placeTeacher(part, teacherStrip(part.outline, wall)));
}
