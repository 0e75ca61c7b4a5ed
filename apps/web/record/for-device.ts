import type { KeptStream, StreamName } from "#app/ports";
import type { PersonState, SessionState } from "#core/roll";

/** How far back and ahead evenings are kept on the device, in days. */
export const DAYS_KEPT = 14;

/**
 * What of the record is kept on this device: the evenings near `now`, all passes, and of people what a register
 * shows. Of health nothing but the dot; phone and emergency contact only of those in an evening that is kept.
 */
export function forDevice(streams: readonly KeptStream[], now: string): readonly KeptStream[] {
  const near = streams.filter((it) => !isSession(it) || isNear(it, now));
  const coming = new Set(near.filter(isSession).flatMap(peopleIn));
  return near
    .filter(({ stream }) => !stream.startsWith("accident/"))
    .map((it) => (it.stream.startsWith("person/") ? trimmed(it, coming.has(it.stream)) : it));
}

function isSession({ stream }: KeptStream): boolean {
  return stream.startsWith("session/");
}

function isNear({ sort }: KeptStream, now: string): boolean {
  return Math.abs(Date.parse(sort) - Date.parse(now)) <= DAYS_KEPT * 86_400_000;
}

function peopleIn({ state }: KeptStream): readonly StreamName[] {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the name of the stream was asked
  const { places, waiting, cameOver } = state as SessionState;
  return [...places, ...waiting, ...cameOver].map(({ person }) => `person/${person}` as const);
}

function trimmed(kept: KeptStream, comes: boolean): KeptStream {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- as above
  const person = kept.state as PersonState;
  const { health: _, ...consents } = person.consents;
  const speak = person.healthForm?.speak === true;
  const contact = comes
    ? person.contact
    : { ...person.contact, phone: "", email: "", emergencyName: "", emergencyPhone: "" };
  const healthForm = speak ? { at: "", reviewBy: "", speak } : null;
  return { ...kept, state: { ...person, consents, contact, healthForm } satisfies PersonState };
}
