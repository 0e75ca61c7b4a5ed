import { emptyClass } from "#core/class";
import { expect, test } from "vitest";
import { guessWords } from "./guess-words.ts";

test("a few guesses are named", () => {
  expect(guessWords("Rests on 2 guesses.", ["mix", "costs.other"])).toBe(
    "Rests on 2 guesses: how people pay, other costs.",
  );
});

test("many guesses are only counted", () => {
  expect(guessWords("Rests on 5 guesses.", ["mix", "heads", "weekday", "start", "minutes.class"])).toBe(
    "Rests on 5 guesses.",
  );
});

test("a guess that has no words of its own is counted and not shown as a path", () => {
  expect(guessWords("Rests on 1 guess.", ["hire.heating.perHour"])).toBe("Rests on 1 guess.");
});

test("every guess that a new class begins with has words", () => {
  const practice = { currency: "GBP", locale: "en-GB" } as const;
  for (const path of emptyClass({ practice, today: "2027-01-11" }).guesses) {
    expect(guessWords("Rests on 1 guess.", [path])).toMatch(/^Rests on 1 guess: .+\.$/);
  }
});
