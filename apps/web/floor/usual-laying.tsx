import type { Problem } from "#core/words";
import type { FloorPart } from "./floor-part.ts";
import type { FloorHistory } from "./use-floor-history.ts";

type Props = { readonly problems: readonly Problem[]; readonly floor: FloorHistory };

/** The way out where a wall was moved past the centre of the rings, so that no mats are drawn and no field asks for it. */
export function UsualLaying({ problems, floor }: Props) {
  const wrong = problems.some(({ place }) => place === "ringCentre" || place === "middleWidth");
  if (!wrong) return null;
  return (
    <p>
      <button type="button" className="button" onClick={() => floor.settle(usual(floor.shown))}>
        Lay the mats around the usual place
      </button>
    </p>
  );
}

function usual(part: FloorPart): FloorPart {
  const { middleWidth: _, ringCentre: __, ...rest } = part;
  return rest;
}
