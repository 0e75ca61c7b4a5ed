import { passProblem } from "#core/books";
import type { PlaceKind, SessionState } from "#core/roll";
import type { Writer } from "#core/words";
import type { Lookup } from "../record/lookup.ts";

/** One way in which somebody can have a place. */
export type HowChoice = {
  /** "single", or "pass:p-7" */
  readonly value: string;
  readonly how: PlaceKind;
  readonly pass: string | null;
  readonly label: string;
  /** minor units; 0: nothing to pay now */
  readonly price: number;
};

/** The ways open to a person: passes that are good for this session first, then what is paid at once. */
export function howChoices(
  id: string,
  session: SessionState,
  person: string | null,
  look: Lookup,
  writer: Writer,
): readonly HowChoice[] {
  const { currency, single, concession } = session;
  const money = (amount: number) => writer.money(amount, currency);
  return [
    ...passChoices(id, session, person, look, writer),
    choice("single", single, `Single ${money(single)}`),
    ...(concession < single ? [choice("concession", concession, `Concession ${money(concession)}`)] : []),
    choice("free", 0, "Free"),
    choice("guest", 0, "Guest"),
  ];
}

function choice(how: PlaceKind, price: number, label: string): HowChoice {
  return { value: how, how, pass: null, label, price };
}

function passChoices(
  id: string,
  session: SessionState,
  person: string | null,
  look: Lookup,
  writer: Writer,
): readonly HowChoice[] {
  const meeting = { kind: "promised", session: id, class: session.class, on: session.date } as const;
  return look.passes
    .filter(({ state }) => state.holder === person && passProblem(state, meeting, writer) === null)
    .map(({ id: pass, state }) => ({
      value: `pass:${pass}`,
      how: state.form,
      pass,
      label: `${state.name}: ${state.left} left`,
      price: 0,
    }));
}
