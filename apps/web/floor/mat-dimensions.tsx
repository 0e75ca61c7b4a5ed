import type { Mat, MatPlan } from "#core/hall";
import { formatLengthShort, type LengthUnits } from "#core/words";
import { memo, useMemo } from "react";
import { middle, readable } from "./dimension-placing.ts";
import { type ChainLink, setOutChains } from "./set-out-chain.ts";
import { TickLine } from "./tick-line.tsx";
import { toPaper, type Viewport } from "./viewport.ts";

type Props = {
  readonly mat: Mat;
  readonly plan: MatPlan;
  readonly view: Viewport;
  readonly units: LengthUnits;
};

/** The set-out figures on the drawing: a chain along the first line and one across the lines. */
export const MatDimensions = memo(function MatDimensions({ mat, plan, view, units }: Props) {
  const chains = useMemo(() => setOutChains(plan, mat), [plan, mat]);
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
  return links.map((link, index) => {
    const before = links[index - 1];
    const said = index > 1 && before !== undefined && Math.round(before.length) === Math.round(link.length);
    return <Link key={index} link={link} figure={!said} view={view} units={units} />;
  });
}

/** Pixels to a sign below which a figure would run into its neighbours; the set-out list has it anyway. */
const LEAST_ROOM = 5;

function Link(props: { readonly link: ChainLink; readonly figure: boolean } & Pick<Props, "view" | "units">) {
  const { link, figure, view, units } = props;
  const from = toPaper(view, link.from);
  const to = toPaper(view, link.to);
  const [x, y] = middle(from, to);
  const room = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const angle = readable((Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI);
  if (room < 1) return null;
  const text = formatLengthShort(link.length, units);
  return (
    <g>
      <TickLine from={from} to={to} />
      {figure && room >= text.length * LEAST_ROOM && (
        <text
          className="floor-figure floor-small"
          x={x}
          y={y}
          transform={`rotate(${angle} ${x} ${y}) translate(0 ${room < 26 ? -9 : -7})`}
        >
          {text}
        </text>
      )}
    </g>
  );
}
