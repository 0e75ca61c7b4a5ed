import { emptyClass, guessName } from "#core/class";
import { expect, test } from "vitest";
import { guessWords } from "./guess-words.ts";

test("a few guesses are named", () => {
  expect(guessWords("Rests on 2 guesses.", ["how many come", "what music costs"])).toBe(
    "Rests on 2 guesses: how many come, what music costs.",
  );
});

test("many guesses are only counted", () => {
  expect(guessWords("Rests on 5 guesses.", ["one", "two", "three", "four", "five"])).toBe(
    "Rests on 5 guesses.",
  );
});

test("every guess that a new class begins with has a name in words, none a path", () => {
  const practice = { currency: "GBP", locale: "en-GB" } as const;
  const { guesses } = emptyClass({ practice, today: "2027-01-11" });
  expect(guesses.length).toBeGreaterThan(5);
  expect(guesses.filter((path) => /^\S+$/.test(guessName(path, practice.locale)))).toEqual([]);
});
