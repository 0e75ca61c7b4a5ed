import { cornerName } from "#core/hall";
import { formatLengthShort, type LengthUnits } from "#core/words";
import type { Point } from "#kernels/geometry";
import { along, middle, readable } from "../floor/dimension-placing.ts";
import { fitViewport, pointsText, toPaper, type Viewport } from "../floor/viewport.ts";

type Props = {
  /** corners walked so far; the last is where the last wall ends */
  readonly path: readonly Point[];
  /** as typed, millimetres */
  readonly lengths: readonly number[];
  /** millimetres to where one began; null where it cannot be told */
  readonly gap: number | null;
  readonly units: LengthUnits;
};

/** The walls so far, and dashed how far it still is to the corner where one began. */
export function TapeSketch({ path, lengths, gap, units }: Props) {
  const view = fitViewport(path, { width: 360, maxHeight: 240, margin: 34 });
  const [start = [0, 0] as const] = path;
  const end = path.at(-1) ?? start;
  const open = lengths.length >= 2 && gap !== null && gap > 0;
  return (
    <svg
      className="floor-plan tape-sketch"
      viewBox={`0 0 ${view.width} ${view.height}`}
      role="img"
      aria-label={`The walls so far: ${lengths.length}`}
    >
      {lengths.length >= 2 ? <polygon className="floor-ground" points={pointsText(view, path)} /> : null}
      {open ? <line className="tape-gap" {...ends(toPaper(view, end), toPaper(view, start))} /> : null}
      <polyline className="floor-walls" points={pointsText(view, path)} />
      {lengths.map((length, index) => (
        <WallFigure key={index} path={path} index={index} length={length} view={view} units={units} />
      ))}
      {path.map((corner, index) => (
        <Corner key={index} at={toPaper(view, corner)} name={cornerName(index)} first={index === 0} />
      ))}
    </svg>
  );
}

function ends(from: Point, to: Point) {
  return { x1: from[0], y1: from[1], x2: to[0], y2: to[1] };
}

function Corner({ at, name, first }: { readonly at: Point; readonly name: string; readonly first: boolean }) {
  return (
    <g>
      <circle className={first ? "tape-begin" : "tape-corner"} cx={at[0]} cy={at[1]} r={first ? 6 : 3.5} />
      <text className="floor-label" x={at[0] - 12} y={at[1] + (first ? 13 : -12)}>
        {name}
      </text>
    </g>
  );
}

type FigureProps = {
  readonly path: readonly Point[];
  readonly index: number;
  readonly length: number;
  readonly view: Viewport;
  readonly units: LengthUnits;
};

function WallFigure({ path, index, length, view, units }: FigureProps) {
  const [a, b] = [path[index], path[index + 1]].map((it) => toPaper(view, it ?? [0, 0]));
  if (a === undefined || b === undefined) return null;
  const shown = Math.hypot(b[0] - a[0], b[1] - a[1]);
  // a figure needs about 40 px of wall
  if (shown < 40) return null;
  const right: Point = [-(b[1] - a[1]) / shown, (b[0] - a[0]) / shown];
  const [x, y] = along(middle(a, b), right, 14);
  const angle = readable((Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI);
  return (
    <text className="floor-figure" x={x} y={y} transform={`rotate(${angle} ${x} ${y})`}>
      {formatLengthShort(length, units)}
    </text>
  );
}
