import { applySession } from "./apply-session.ts";
import { offerUntil } from "./offer-until.ts";
import type { SessionEvent } from "./session-event.ts";
import { freeMats, type SessionState, type Waiting } from "./session-state.ts";

/**
 * What is owed to the waiting list at this moment: offers that nobody answered end, and every free mat is offered in
 * the order of the list. Two who want to come together are offered two mats or none, and keep their turn.
 * Doing it again at the same moment changes nothing.
 */
export function settleOffers(session: SessionState, now: string): readonly SessionEvent[] {
  if (session.cancelled !== null || session.closed || now >= session.starts) return [];
  const lapsed = session.waiting.filter((it) => isLapsed(it, now)).map(noAnswer);
  const left = lapsed.reduce<SessionState>(applySession, session);
  return [...lapsed, ...newOffers(left, now)];
}

function isLapsed({ offer }: Waiting, now: string): boolean {
  return offer !== null && offer.until !== null && offer.until < now;
}

function noAnswer({ entry }: Waiting): SessionEvent {
  return { kind: "stopped waiting", entry, why: "no answer" };
}

function newOffers(session: SessionState, now: string): readonly SessionEvent[] {
  const { starts, zone } = session;
  const free = freeMats(session);
  if (free <= 0) return [];
  const until = offerUntil({ now, starts, zone });
  const asked = until === null ? session.waiting : firstThatFit(session.waiting, free);
  return asked.filter(({ offer }) => offer === null).map(({ entry }) => ({ kind: "offered", entry, until }));
}

/** Those who are next and fit on the free mats; who comes in two is passed over while there is one mat only. */
function firstThatFit(waiting: readonly Waiting[], free: number): readonly Waiting[] {
  const unasked = waiting.filter(({ offer }) => offer === null);
  return unasked.reduce<readonly Waiting[]>((chosen, it) => {
    const party = partyOf(unasked, it);
    const fits = !chosen.includes(it) && chosen.length + party.length <= free;
    return fits ? [...chosen, ...party] : chosen;
  }, []);
}

function partyOf(waiting: readonly Waiting[], it: Waiting): readonly Waiting[] {
  return [it, ...waiting.filter(({ entry }) => entry === it.with)];
}
