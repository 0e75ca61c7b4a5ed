import { movedByClosure, moveUseBy, type PassState, refundOf } from "#core/books";
import {
  type CancelReason,
  goesBack,
  type MeansOfPaying,
  paidFor,
  type Place,
  type SessionState,
  takesMat,
} from "#core/roll";
import type { Writer } from "#core/words";
import type { Desk } from "./desk.ts";

/** What is asked when a session is to be cancelled. */
export type CancelAsked = {
  readonly session: string;
  readonly why: CancelReason;
  /** later dates of the class, ISO: a pass moves along them */
  readonly teachingDates: readonly string[];
  /** other live passes that are good for the class, whose holders had no place */
  readonly passes: readonly string[];
};

export type PassMoved = {
  readonly pass: string;
  readonly person: string;
  /** whether a place was held out of it, for which nothing is taken off */
  readonly held: boolean;
  readonly from: string;
  readonly to: string;
  /** beyond the dates that are known: a guess until the year is planned */
  readonly guessed: boolean;
};

export type BlockOffered = { readonly pass: string; readonly person: string; readonly share: number };
export type MoneyBack = {
  readonly place: string;
  readonly person: string;
  readonly amount: number;
  readonly by: MeansOfPaying;
};

/** Everything that follows from a session being cancelled, before it is done. */
export type Follows = {
  readonly session: SessionState;
  readonly passes: readonly PassMoved[];
  readonly blocks: readonly BlockOffered[];
  readonly back: readonly MoneyBack[];
  /** those with a place for whom no money and no pass is touched */
  readonly nothingPaid: readonly string[];
  readonly waiting: readonly string[];
};

/** Worked out from the same streams, by the same rules, as the cancelling itself. */
export function whatFollows(
  known: Pick<Desk, "session" | "pass" | "writer">,
  asked: CancelAsked,
): Follows | undefined {
  const session = known.session(asked.session);
  if (session === undefined) return undefined;
  const held = session.places.filter(takesMat);
  const passes = held.flatMap((place) => passBehind(known, place));
  const others = asked.passes.flatMap((id) => passOf(known, id));
  const closed = { session: asked.session, class: session.class, date: session.date };
  const moves = [
    ...passes.map((it) => ({ ...it, held: true })),
    ...others.filter((it) => !passes.some(({ id }) => id === it.id)).map((it) => ({ ...it, held: false })),
  ];
  return {
    session,
    passes: moves
      .filter(({ state }) => movedByClosure(state, closed))
      .map((it) => moved(it, asked.teachingDates)),
    blocks: passes
      .filter(({ state }) => state.form === "block")
      .map((it) => offered(it, session, known.writer)),
    back: held.flatMap(backFor),
    nothingPaid: held.filter((it) => it.pass === null && paidFor(it) === 0).map(({ person }) => person),
    waiting: session.waiting.map(({ person }) => person),
  };
}

type Known = { readonly id: string; readonly state: PassState };

function passBehind(known: Pick<Desk, "pass">, { pass }: Place): readonly Known[] {
  return pass === null ? [] : passOf(known, pass);
}

function passOf(known: Pick<Desk, "pass">, id: string): readonly Known[] {
  const state = known.pass(id);
  return state === undefined ? [] : [{ id, state }];
}

function moved(
  { id, state, held }: Known & { readonly held: boolean },
  teachingDates: readonly string[],
): PassMoved {
  const to = moveUseBy(state.useBy, teachingDates, 1);
  return { pass: id, person: state.holder, held, from: state.useBy, to: to.date, guessed: to.guessed > 0 };
}

/** One session's share of the block: what is offered beside another date. */
function offered({ id, state }: Known, { date }: SessionState, writer: Writer): BlockOffered {
  const share = refundOf({ ...state, promised: [] }, { classes: 1, on: date }, writer).byShares.amount;
  return { pass: id, person: state.holder, share };
}

function backFor(place: Place): readonly MoneyBack[] {
  const paid = goesBack(place);
  return paid === null ? [] : [{ place: place.id, person: place.person, ...paid }];
}
