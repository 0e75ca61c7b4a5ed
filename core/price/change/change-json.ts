import { type CurrencyCode, minor, moneyText } from "#core/words";
import { Fraction } from "fraction.js";
import { plainDecimal } from "../chance-text.ts";
import type { AmountWriter } from "../reply.ts";
import type { Dial, Flip } from "./what-would-change.ts";

/** Money as decimal strings, all else as numbers. */
export type ChangeJson = {
  readonly path: string;
  readonly name: string;
  readonly now: string | number;
  /** null: nothing in reach changes the answer */
  readonly at: string | number | null;
  readonly becomes: string | null;
  readonly nearness: number | null;
  readonly guess: boolean;
  readonly says: string;
};

/** A flip for programs, with its sentence; `becomes` is how the changed decision is told. */
export function changeJson<Decision extends string | boolean>(
  { dial, at, becomes, nearness }: Flip<Decision>,
  told: (decision: Decision) => string,
  currency: CurrencyCode,
  write: AmountWriter,
): ChangeJson {
  const value = (it: number): string | number =>
    dial.unit === "money" ? moneyText(minor(it), currency) : it;
  const then = becomes === null ? null : told(becomes);
  return {
    path: dial.path,
    name: dial.name,
    now: value(dial.now),
    at: at === null ? null : value(at),
    becomes: then,
    nearness,
    guess: dial.guess,
    says: changeSentence(dial, at, then, currency, write),
  };
}

function changeSentence(
  dial: Dial,
  at: number | null,
  then: string | null,
  currency: CurrencyCode,
  write: AmountWriter,
): string {
  const known = dial.guess ? "a guess" : "known";
  const now = `${capital(dial.name)}, now ${valueText(dial, dial.now, currency, write)} (${known})`;
  if (at === null || then === null) return `${now}: no change of it alone changes the answer.`;
  const way = at > dial.now ? "or more" : "or less";
  return `${now}: at ${valueText(dial, at, currency, write)} ${way} ${then}.`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function valueText({ unit }: Dial, value: number, currency: CurrencyCode, write: AmountWriter): string {
  switch (unit) {
    case "money":
      return write(new Fraction(value), currency);
    case "minutes":
      return `${plainDecimal(value, 1)} minutes`;
    case "people":
    case "plain":
      return plainDecimal(value, 3);
  }
}

/** Whether a path, or what it stands in, or something in it, is marked as a guess. */
export function isGuess(guesses: readonly string[], path: string): boolean {
  return guesses.some((guess) => path === guess || isWithin(path, guess) || isWithin(guess, path));
}

function isWithin(path: string, outer: string): boolean {
  return path.startsWith(`${outer}.`) || path.startsWith(`${outer}[`);
}
