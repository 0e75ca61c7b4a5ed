import { expect, test } from "vitest";
import { slotWords } from "./slot-words.ts";

const terms = { minimumMinutes: 60, incrementMinutes: 30, freeBeforeMinutes: 15, freeAfterMinutes: 0 };

test("the slot is told with its least, its steps and what is free", () => {
  expect(slotWords(terms)).toBe(
    "At least 60 minutes are charged, in steps of 30; 15 minutes are free before.",
  );
});

test("a hall without a minimum that charges every minute", () => {
  const every = { minimumMinutes: 0, incrementMinutes: 1, freeBeforeMinutes: 0, freeAfterMinutes: 1 };
  expect(slotWords(every)).toBe("Minutes are charged, to the minute; 1 minute is free after.");
});

test("a session is charged whole", () => {
  expect(slotWords({ ...terms, perSession: "42.00" })).toBe(
    "A session is charged whole, however long it is.",
  );
});
