import type { CurrencyCode, Minor } from "#core/words";
import { type Accepting, MOST_ACCEPTED } from "./accept-at-most.ts";
import { turnUpOf } from "./turn-up.ts";

/** What she feels one person sent home and one empty mat cost her. */
export type OpeningCosts = {
  readonly currency: CurrencyCode;
  readonly turnedAway: Minor;
  readonly emptyMat: Minor;
};

export type CostView = {
  readonly accept: number;
  /** in minor units, on average */
  readonly cost: number;
};

export type NightOutlook = {
  readonly accepted: number;
  readonly expected: number;
  readonly chanceOver: number;
  readonly turnedAway: number;
  readonly emptyMats: number;
};

/** What a number accepted leads to on the night, on average. */
export function nightOf(
  { room, turnUp, together }: Pick<Accepting, "room" | "turnUp" | "together">,
  accepted: number,
): NightOutlook {
  const coming = turnUpOf(accepted, turnUp, together);
  const over = coming.slice(room + 1);
  return {
    accepted,
    expected: accepted * turnUp,
    chanceOver: Math.min(
      1,
      over.reduce((sum, chance) => sum + chance, 0),
    ),
    turnedAway: over.reduce((sum, chance, beyond) => sum + chance * (beyond + 1), 0),
    emptyMats: coming.slice(0, room).reduce((sum, chance, came) => sum + chance * (room - came), 0),
  };
}

/**
 * The number with the least (cost of one turned away) × E[(X − room)+] + (cost of an empty mat) × E[(room − X)+],
 * within the hard stop, and for paid places within the room. The sum only falls and then rises with the number
 * accepted, so the first rise ends the search.
 */
export function costView(accepting: Accepting, costs: OpeningCosts): CostView {
  const most = Math.min(MOST_ACCEPTED, accepting.hardStop ?? MOST_ACCEPTED);
  const last = accepting.paid ? Math.min(accepting.room, most) : most;
  let best = { accept: 0, cost: costOf(accepting, costs, 0) };
  for (let accepted = 1; accepted <= last; accepted += 1) {
    const cost = costOf(accepting, costs, accepted);
    if (cost > best.cost + 1e-9) break;
    if (cost < best.cost - 1e-9) best = { accept: accepted, cost };
  }
  return best;
}

function costOf(accepting: Accepting, costs: OpeningCosts, accepted: number): number {
  const night = nightOf(accepting, accepted);
  return costs.turnedAway * night.turnedAway + costs.emptyMat * night.emptyMats;
}
