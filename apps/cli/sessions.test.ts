import { join } from "node:path";
import { expect, it, test } from "vitest";
import { inTerminal } from "./pretend-terminal.ts";

test("what hallful sessions --json answers is what hallful demand takes", async () => {
  const rows = [14, 14, 12, 14, 13, 14, 14, 11, 14, 14].map((heads, at) => `${at + 4}.1.2027;${heads}`);
  const input = `Datum;Heads\n${rows.join("\n")}\n`;
  const words = ["sessions", "-", "--places", "14", "--date-order", "day-first", "--json"];
  const { code, out } = await inTerminal(words, { input });
  expect(code).toBe(0);
  const demand = await inTerminal(["demand", "-", "--json"], { input: out });
  expect(demand.code).toBe(0);
  // seven full evenings of ten hide a mean of 16
  expect(JSON.parse(demand.out).mean).toBeGreaterThan(14);
});

test("an empty file, a spreadsheet and dates either way round are told as they are for visits", async () => {
  const folder = join(import.meta.dirname, "zoo", "still-coming");
  for (const [name, code] of [
    ["empty", "table-empty"],
    ["a-spreadsheet-called-csv", "table-not-text"],
    ["quote-never-closed", "table-quote-open"],
  ] as const) {
    // oxlint-disable-next-line no-await-in-loop -- one after the other
    const seen = await inTerminal(["sessions", `${name}.csv`], { folder });
    expect(seen).toMatchObject({ code: 2, out: "" });
    expect(seen.err).toContain(`[${code}]`);
  }
});

it.each([
  [["--heads", "Mats"], "column-unknown", "--heads"],
  [["--turned-away", "Heads", "--heads", "Heads"], "column-twice", "--turned-away"],
  [["--places", "none"], "option-not-places", "--places"],
  [["--places", "0"], "option-not-places", "--places"],
  [["--names", "maybe"], "names-unknown", "--names"],
] as const)("%j is told as %s at %s", async (options, code, place) => {
  const input = "Date,Heads\n2027-04-06,9\n2027-04-13,12\n";
  const seen = await inTerminal(["sessions", "-", ...options, "--json"], { input });
  expect(seen.code).toBe(2);
  expect(JSON.parse(seen.err).problems).toMatchObject([{ code, place }]);
});

test("a file of which no row can be used says so with the first of them", async () => {
  const seen = await inTerminal(["sessions", "-"], { input: "Date,Heads\n2027-04-06,-3\n2027-04-13,1.5\n" });
  expect(seen.err).toBe(
    "None of the 2 rows could be used. Row 2, “-3”: People are counted whole, from 0 to 1000. Look whether the columns are the right ones, and say them. [rows-unusable]\n",
  );
});
