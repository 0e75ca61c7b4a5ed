import { bad, good, type Result } from "#core/words";
import { placeGivenUp, placeUnknown } from "./at-the-door.ts";
import type { SessionEvent } from "./session-event.ts";
import { placeIn, type SessionState, takesMat } from "./session-state.ts";

/**
 * A place is given up. `late` is what the notice rule says of the moment it was made; `waived` lets the lateness go.
 * Who came along keeps her own place. Problems: "place-unknown", "place-given-up".
 */
export function giveUpPlace(
  session: SessionState,
  id: string,
  notice: { readonly late: boolean; readonly waived: boolean },
): Result<readonly SessionEvent[]> {
  const place = placeIn(session, id);
  if (place === undefined) return bad(placeUnknown());
  if (!takesMat(place)) return bad(placeGivenUp());
  return good([{ kind: "given up", place: id, late: notice.late, waived: notice.late && notice.waived }]);
}
