import { dateIn } from "#kernels/calendar";
import {
  type Entry,
  type Heading,
  type PassEvent,
  passEntries,
  type PlaceMoney,
  placeGivenBack,
  placePaid,
  placeTaught,
  undone,
} from "#core/books";
import { isCharged, type Paid, paidFor, type Place, type PlaceKind, type SessionState } from "#core/roll";
import type { Desk } from "./desk.ts";

/**
 * Money and passes follow the register: after a session was told of something, everything that its places changed is
 * carried over, once. A place held out of a pass speaks for a class; one that is charged takes it off or is earned; one
 * that is not charged after all gives it back.
 */
export function settlePlaces(desk: Desk, id: string, before: SessionState | undefined): void {
  const after = desk.session(id);
  if (after === undefined) return;
  const known = new Map(before?.places.map((place) => [place.id, place]));
  for (const place of after.places) {
    const was = known.get(place.id);
    if (was === place) continue;
    if (place.pass === null) desk.post(`session/${id}`, ...moneyOf(after, was, place, desk));
    else followPass(desk, { session: id, class: after.class, on: after.date }, place.pass, was, place);
  }
}

/** Tells a pass of something and writes what it means into the books. */
export function tellPass(desk: Desk, pass: string, event: PassEvent): void {
  desk.post(`pass/${pass}`, ...passEntries(desk.pass(pass) ?? null, event));
  desk.tellPass(pass, event);
}

type Link = "none" | "promised" | "charged";

function linkOf(place: Place | undefined): Link {
  if (place === undefined) return "none";
  if (isCharged(place)) return "charged";
  return place.state === "held" ? "promised" : "none";
}

type Meeting = { readonly session: string; readonly class: string; readonly on: string };

function followPass(desk: Desk, meeting: Meeting, pass: string, was: Place | undefined, place: Place): void {
  const [from, to] = [linkOf(was), linkOf(place)];
  if (from === to) return;
  const { session, on } = meeting;
  if (from === "charged") tellPass(desk, pass, { kind: "returned", on, session, why: whyBack(place) });
  if (from === "promised" && to === "none") tellPass(desk, pass, { kind: "freed", on, session });
  if (to === "promised") tellPass(desk, pass, { kind: "promised", ...meeting });
  if (to === "charged") tellPass(desk, pass, { kind: "used", ...meeting, why: whyTaken(place) });
}

function whyTaken({ state }: Place): "attended" | "late" | "not-come" {
  if (state === "attended") return "attended";
  return state === "not come" ? "not-come" : "late";
}

function whyBack({ state }: Place): "kindness" | "mistake" {
  return state === "given up late" ? "kindness" : "mistake";
}

function moneyOf(
  session: SessionState,
  was: Place | undefined,
  place: Place,
  { made }: Desk,
): readonly Entry[] {
  const paid = place.paid.slice(was?.paid.length ?? 0);
  const wasCharged = was !== undefined && isCharged(was);
  const charged = isCharged(place);
  const before = moneyBehind(session, place, was === undefined ? 0 : paidFor(was));
  const now = moneyBehind(session, place, paidFor(place));
  const today = dateIn(made, session.zone);
  return [
    ...(wasCharged && !charged ? [undone(placeTaught(before, session.date), session.date)] : []),
    ...paid.map((part) => paidEntry(before, part, today, wasCharged && charged)),
    ...(charged && !wasCharged ? [placeTaught(now, session.date)] : []),
  ];
}

function paidEntry(money: PlaceMoney, { amount, by }: Paid, on: string, taught: boolean): Entry {
  return amount < 0
    ? placeGivenBack(money, { amount: -amount, by, on, taught })
    : placePaid(money, { amount, by, on, taught });
}

function moneyBehind({ currency }: SessionState, { id, how, price }: Place, paid: number): PlaceMoney {
  return { place: id, heading: headingOf(how), currency, price, paid };
}

function headingOf(how: PlaceKind): Heading {
  return how === "concession" ? "concession" : "single";
}
