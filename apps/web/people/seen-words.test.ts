import { expect, test } from "vitest";
import { seenWords } from "./seen-words.ts";

const came = { person: "p-1", last: "2026-11-03", times: 4 };

test("somebody is not seen for whole weeks, said from the third on", () => {
  // 3 to 23 November are 20 days, to the 24th 21
  expect(seenWords(came, "2026-11-23", "en-GB")).toBe("Last came on Tuesday 3 November 2026.");
  expect(seenWords(came, "2026-11-24", "en-GB")).toBe(
    "Last came on Tuesday 3 November 2026: not seen for 3 weeks.",
  );
  expect(seenWords(came, "2026-12-08", "en-US")).toBe(
    "Last came on Tuesday, November 3, 2026: not seen for 5 weeks.",
  );
});

test("who was at no session of the year is not said to be lost", () => {
  expect(seenWords(undefined, "2026-11-24", "en-GB")).toBe("Not at a session of the last 52 weeks.");
});
