import type { Distribution } from "#kernels/statistics";
import { type Together, turnUpOf } from "./turn-up.ts";

// 18 mats, at most 16 wanted, 60 % come, several in pairs, risk 5 %: 19 are accepted, 21 if each decided alone.
// Never: a place accepted that is paid beyond the room, or more people than the hall's posted number allows.

export type OpeningRoom = {
  /** people who can take part: the least of mats, own cap, insurer's cap and the posted number less those not on mats */
  readonly room: number;
  /** the posted number less those not on mats; null when the hall states none */
  readonly hardStop: number | null;
};

export type Accepting = OpeningRoom & {
  readonly turnUp: number;
  readonly together: Together;
  /** the most that the chance of more people than room may be */
  readonly risk: number;
  /** paid places are promised: none beyond the room */
  readonly paid: boolean;
};

/** Beyond this an opening is no class; it also ends the search when nobody comes at all. */
export const MOST_ACCEPTED = 2000;

/**
 * The largest number to accept so that the chance of more than room coming stays within the risk:
 * P(X > room) ≤ risk. Paid places stop at the room, and every number at the hard stop. Method: methods 4,
 * trade F14.
 */
export function acceptAtMost(accepting: Accepting): number {
  const { room, hardStop, paid, risk } = accepting;
  const most = Math.min(MOST_ACCEPTED, hardStop ?? MOST_ACCEPTED);
  if (paid || room >= most) return Math.min(room, most);
  // by halving: more accepted is never less risk
  let enough = room;
  let tooMany = most + 1;
  while (tooMany - enough > 1) {
    const middle = Math.floor((enough + tooMany) / 2);
    if (chanceOver(accepting, middle) <= risk + ROUNDING) enough = middle;
    else tooMany = middle;
  }
  return enough;
}

// a chance that falls on the line in doubles may miss it by their last digits
const ROUNDING = 1e-12;

/** P(X > room) when so many are accepted. */
export function chanceOver(
  { room, turnUp, together }: Pick<Accepting, "room" | "turnUp" | "together">,
  accepted: number,
): number {
  return tail(turnUpOf(accepted, turnUp, together), room);
}

function tail(distribution: Distribution, room: number): number {
  return Math.min(
    1,
    distribution.slice(room + 1).reduce((sum, chance) => sum + chance, 0),
  );
}
