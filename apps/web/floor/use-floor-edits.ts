import { useMemo } from "react";
import { removeCorner, removeShape, setWallLength } from "#core/hall";
import { type Millimetres, type Problem, problem } from "#core/words";
import { changed, type Handle } from "./handle.ts";
import type { FloorHistory } from "./use-floor-history.ts";

export type FloorEdits = {
  readonly setLength: (wall: number, length: Millimetres) => Problem | null;
  readonly remove: (handle: Handle) => void;
};

/** What the keys and fields of the editor do, each as one step to undo. */
export function useFloorEdits(floor: FloorHistory): FloorEdits {
  return useMemo(() => floorEdits(floor), [floor]);
}

function floorEdits(floor: FloorHistory): FloorEdits {
  const part = floor.shown;
  return {
    setLength: (wall, length) => {
      if (length < 10) return tooShort(wall);
      floor.settle(changed(part, setWallLength(part, { kind: "floor" }, wall, length)));
      return null;
    },
    remove: (handle) => {
      if (handle.kind === "shape") floor.settle(changed(part, removeShape(part, handle.shape)));
      if (handle.kind === "corner")
        floor.settle(changed(part, removeCorner(part, handle.shape, handle.corner)));
    },
  };
}

function tooShort(wall: number): Problem {
  return problem(
    "wall-too-short",
    `outline[${wall}]`,
    "A wall is at least 1 cm long.",
    "Give its length, or delete one of its corners to be rid of it.",
  );
}
