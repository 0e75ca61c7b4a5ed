import { isCurrency } from "#core/words";
import { expect, test } from "vitest";
import type { Form } from "./form.tsx";
import { formStore } from "./form-store.ts";

const nothing = () => undefined;

function form(part: Partial<Form>): Form {
  const currency = "GBP";
  if (!isCurrency(currency)) throw new Error(currency);
  return {
    currency,
    typed: {},
    type: nothing,
    dropTyped: nothing,
    problems: [],
    isGuess: () => false,
    setGuess: nothing,
    ...part,
  };
}

const late = {
  code: "time-unreadable",
  place: "start",
  says: "“late” is no time.",
  next: "Write 18:30.",
} as const;

test("a field sees the same object while nothing of it changes", () => {
  const store = formStore(form({}));
  const before = store.field("heads");
  store.write(form({ typed: { start: "late" }, problems: [late] }));
  expect(store.field("heads")).toBe(before);
  const start = store.field("start");
  expect(start).toMatchObject({ typed: "late", problem: late });
  // the same problem, told again
  store.write(form({ typed: { start: "late" }, problems: [{ ...late }] }));
  expect(store.field("start")).toBe(start);
});

test("who listens hears of each new form once and no more after leaving", () => {
  const store = formStore(form({}));
  let heard = 0;
  const leave = store.subscribe(() => {
    heard += 1;
  });
  const next = form({ isGuess: () => true });
  store.write(next);
  store.write(next);
  expect([heard, store.field("heads").guess]).toEqual([1, true]);
  leave();
  store.write(form({}));
  expect(heard).toBe(1);
});
