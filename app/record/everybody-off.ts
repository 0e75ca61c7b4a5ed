import { goesBack, type SessionEvent, type SessionState, takesMat } from "#core/roll";

/** Everybody who waits or has a place in a session is let go, in time and without charge: it does not take place. */
export function everybodyOff({ waiting, places }: SessionState): readonly SessionEvent[] {
  return [
    ...waiting.map(({ entry }) => ({ kind: "stopped waiting", entry, why: "session cancelled" }) as const),
    ...places
      .filter(takesMat)
      .map(({ id: place }) => ({ kind: "given up", place, late: false, waived: false }) as const),
  ];
}

/** What came in for their places goes back. */
export function moneyBack({ places }: SessionState): readonly SessionEvent[] {
  return places.filter(takesMat).flatMap((place) => {
    const paid = goesBack(place);
    return paid === null ? [] : [{ kind: "paid back", place: place.id, paid } as const];
  });
}
