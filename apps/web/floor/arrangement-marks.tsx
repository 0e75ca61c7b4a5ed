import type { ArrangedMatPlan } from "#core/hall";
import type { Polygon } from "#kernels/geometry";
import { useId } from "react";
import { pointsText, toPaper, type Viewport } from "./viewport.ts";

type Props = {
  readonly plan: ArrangedMatPlan;
  /** nothing is drawn past the walls */
  readonly outline: Polygon;
  readonly view: Viewport;
};

/** What a plan is laid round: the middle that two banks face, or the centre and the strings of rings. */
export function ArrangementMarks({ plan, outline, view }: Props) {
  const walls = useId();
  if (plan.arrangement !== "facing" && plan.arrangement !== "round") return null;
  return (
    <g>
      <clipPath id={walls}>
        <polygon points={pointsText(view, outline)} />
      </clipPath>
      <g clipPath={`url(#${walls})`}>
        <Marks plan={plan} view={view} />
      </g>
    </g>
  );
}

function Marks({ plan, view }: Pick<Props, "plan" | "view">) {
  switch (plan.arrangement) {
    case "facing":
      if (plan.middle === null) return null;
      return <polygon className="floor-middle" points={pointsText(view, plan.middle.outline)} />;
    case "round": {
      const [x, y] = toPaper(view, plan.centre);
      return (
        <g className="floor-rings">
          {plan.ringSetOut.rings.map(({ radius }) => (
            <circle key={radius} cx={x} cy={y} r={radius * view.scale} />
          ))}
          <path d={`M${x - 6} ${y}H${x + 6}M${x} ${y - 6}V${y + 6}`} />
        </g>
      );
    }
    case "lines":
    case "staggered":
    case "most":
      return null;
  }
}
