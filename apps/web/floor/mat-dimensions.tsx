import type { FloorDraft, Mat } from "#core/hall";
import { formatLengthShort, type LengthUnits } from "#core/words";
import type { Point } from "#kernels/geometry";
import { memo, useMemo } from "react";
import { middle, readable } from "./dimension-placing.ts";
import { type ChainLink, type LinedPlan, setOutChains } from "./set-out-chain.ts";
import { toPaper, type Viewport } from "./viewport.ts";

type Props = {
  readonly mat: Mat;
  readonly plan: LinedPlan;
  readonly floor: Pick<FloorDraft, "outline" | "teacher">;
  readonly view: Viewport;
  readonly units: LengthUnits;
};

/** The set-out figures on the drawing: a chain along a line with the most mats and one across the lines. */
export const MatDimensions = memo(function MatDimensions({ mat, plan, floor, view, units }: Props) {
  const chains = useMemo(() => setOutChains(plan, mat, floor), [plan, mat, floor]);
  return (
    <g className="floor-set-out">
      <Chain links={chains.alongLine} view={view} units={units} />
      <Chain links={chains.across} view={view} units={units} />
    </g>
  );
});

type ChainProps = { readonly links: readonly ChainLink[] } & Pick<Props, "view" | "units">;

/** Ticks for every link; a figure where the length changes, so that twelve equal ones are said once. */
function Chain({ links, view, units }: ChainProps) {
  const drawn = links.map((link) => ({
    ...link,
    from: toPaper(view, link.from),
    to: toPaper(view, link.to),
  }));
  const ends = drawn.flatMap((link) => [link.from, link.to]);
  return (
    <>
      <path className="floor-hairline" d={drawn.map(({ from, to }) => `M${at(from)}L${at(to)}`).join("")} />
      <path className="floor-tick" d={ends.map(tick).join("")} />
      {drawn
        .filter((link, index) => isSaid(link, drawn[index - 1], index))
        .map((link) => (
          <Figure key={at(link.from)} link={link} units={units} />
        ))}
    </>
  );
}

/** The first link is from the wall, the second the first from mat to mat: both are said. */
function isSaid(link: ChainLink, before: ChainLink | undefined, index: number): boolean {
  return index < 2 || before === undefined || Math.round(before.length) !== Math.round(link.length);
}

/** An architect's slanting tick. */
function tick([x, y]: Point): string {
  return `M${at([x - 4, y + 4])}L${at([x + 4, y - 4])}`;
}

function at([x, y]: Point): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}

/** Pixels to a sign below which a figure would run into its neighbours; the set-out list has it anyway. */
const LEAST_ROOM = 5;

/** The figure of a link that lies on paper already. */
function Figure({ link: { from, to, length }, units }: { readonly link: ChainLink } & Pick<Props, "units">) {
  const [x, y] = middle(from, to);
  const room = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const text = formatLengthShort(length, units);
  if (room < text.length * LEAST_ROOM) return null;
  const angle = readable((Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI);
  return (
    <text
      className="floor-figure floor-small"
      x={x}
      y={y}
      transform={`rotate(${angle} ${x} ${y}) translate(0 -7)`}
    >
      {text}
    </text>
  );
}
