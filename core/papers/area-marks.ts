import type { DoorSwing } from "#core/hall";
import type { Point, Polygon } from "#kernels/geometry";
import { hatching } from "./hatching.ts";
import type { Mark } from "./paper-types.ts";
import { onPaper, type PlanView, shapeOnPaper } from "./plan-view.ts";

export type AreaKind = "stays" | "moves" | "clear" | "teacher";

type Pattern = { readonly degrees: number; readonly apart: number; readonly dash?: readonly number[] };

/** Told apart by their lines alone: close strokes, wide strokes, dots, or none. Millimetres. */
const patterns: Readonly<Record<AreaKind, Pattern | null>> = {
  stays: { degrees: 45, apart: 1.1 },
  moves: { degrees: 45, apart: 2.6 },
  clear: { degrees: -45, apart: 1.6, dash: [0.25, 1.1] },
  teacher: null,
};

const edges: Readonly<Record<AreaKind, readonly number[] | null>> = {
  stays: null,
  moves: [2, 1],
  clear: [0.3, 0.9],
  teacher: [4, 1, 0.6, 1],
};

/** An area of the floor, on the paper already. */
export function areaMarks(kind: AreaKind, shape: Polygon): readonly Mark[] {
  const pattern = patterns[kind];
  const edge = edges[kind];
  const strokes: readonly Mark[] =
    pattern === null
      ? []
      : hatching(shape, pattern.degrees, pattern.apart).map((points) => ({
          kind: "line",
          points,
          width: kind === "clear" ? 0.25 : 0.15,
          ...(pattern.dash === undefined ? {} : { dash: pattern.dash }),
        }));
  const ground: Mark = { kind: "shape", points: shape, fill: "paper", width: 0 };
  const rim: Mark = {
    kind: "shape",
    points: shape,
    fill: "none",
    width: 0.3,
    ...(edge === null ? {} : { dash: edge }),
  };
  return [ground, ...strokes, rim];
}

/** An opening in the wall, the leaf standing open and the way of its free edge. */
export function doorMarks(view: PlanView, door: DoorSwing): readonly Mark[] {
  const [hinge, closed, open] = shapeOnPaper(view, [door.hinge, door.closed, door.open]);
  if (hinge === undefined || closed === undefined || open === undefined) return [];
  return [
    { kind: "shape", points: opening(hinge, closed), fill: "paper", width: 0 },
    { kind: "line", points: [hinge, open], width: 0.45 },
    { kind: "line", points: arc(view, door), width: 0.15 },
  ];
}

/** As wide as a wall is drawn, so that it takes away the wall and nothing else. */
function opening(a: Point, b: Point): Polygon {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const [x, y] = [(-(b[1] - a[1]) / length) * 0.55, ((b[0] - a[0]) / length) * 0.55];
  return [
    [a[0] + x, a[1] + y],
    [b[0] + x, b[1] + y],
    [b[0] - x, b[1] - y],
    [a[0] - x, a[1] - y],
  ];
}

/** A quarter circle as 12 straight steps: at most 0.2 % of the leaf beside the true one. */
function arc(view: PlanView, { hinge, closed, open }: DoorSwing): readonly Point[] {
  const steps = 12;
  return Array.from({ length: steps + 1 }, (_, step) => {
    const turn = ((step / steps) * Math.PI) / 2;
    const [shut, stood] = [Math.cos(turn), Math.sin(turn)];
    const at = (axis: 0 | 1): number =>
      hinge[axis] + (closed[axis] - hinge[axis]) * shut + (open[axis] - hinge[axis]) * stood;
    return onPaper(view, [at(0), at(1)]);
  });
}
