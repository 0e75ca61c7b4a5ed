import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { comingPeople } from "#testing";
import { expect, it, test } from "vitest";
import { inTerminal } from "./pretend-terminal.ts";

/** Ugly files of visits, each named for its ugliness, with the code of the first problem it must meet. */
const zoo = {
  "a-pdf": "table-not-text",
  "a-picture": "table-not-text",
  "a-spreadsheet-called-csv": "table-not-text",
  "an-old-spreadsheet-called-csv": "table-not-text",
  "dates-alone": "column-unclear",
  "dates-either-way-round": "date-order-unclear",
  "dates-in-two-orders": "date-order-mixed",
  empty: "table-empty",
  "json-called-csv": "table-quote-open",
  "no-dates": "column-unclear",
  "no-row-that-can-be-used": "rows-unusable",
  noise: "table-not-text",
  "only-blank-lines": "table-empty",
  "only-names": "table-empty",
  "quote-never-closed": "table-quote-open",
} as const;

const folder = join(import.meta.dirname, "zoo", "still-coming");

test("every ugly file of visits is in the list, and the other way round", () => {
  expect(readdirSync(folder).sort()).toEqual(
    Object.keys(zoo)
      .map((name) => `${name}.csv`)
      .sort(),
  );
});

it.each(Object.entries(zoo))("%s is told as %s, from a file and from standard input", async (name, code) => {
  const seen = await inTerminal(["still-coming", `${name}.csv`], { folder });
  expect(seen).toMatchObject({ code: 2, out: "" });
  expect(seen.err).toMatch(/^[^\n]+\. [^\n]+\. \[[a-z-]+\]\n/);
  expect(seen.err).toContain(`[${code}]`);
  const piped = await inTerminal(["still-coming", "-"], { input: readFileSync(join(folder, `${name}.csv`)) });
  expect(piped.err).toBe(seen.err);
});

it.each(["day-first", "month-first"])(
  "a column in two orders is read %s when told so, and what does not fit is listed",
  async (order) => {
    const words = ["still-coming", "dates-in-two-orders.csv", "--date-order", order, "--json"];
    const { code, out } = await inTerminal(words, { folder });
    expect(code).toBe(0);
    const { read, notUsed } = JSON.parse(out);
    expect(read.used).toBe(2);
    expect(notUsed.map((row: { why: string }) => row.why)).toEqual(["other-order", "other-order"]);
  },
);

it.each([
  [["--date", "Colour"], "column-unknown"],
  [["--person", "Date"], "column-twice"],
  [["--person", "7"], "column-unknown"],
  [["--date-order", "english"], "date-order-unknown"],
  [["--names", "perhaps"], "names-unknown"],
  [["--until", "yesterday"], "date-unreadable"],
  [["--until", "1999-01-01"], "visits-none"],
  [["--closed", "August"], "closed-unreadable"],
  [["--closed", "2027-05-01..2027-04-01"], "closure-backwards"],
  [["--model", "poisson"], "model-unknown"],
  [["--every", "month"], "option-other-model"],
  [["--model", "beta-geometric", "--not-seen-for", "3"], "option-other-model"],
  [["--model", "beta-geometric", "--every", "moon"], "period-unknown"],
  [["--model", "beta-geometric"], "stays-too-short"],
  [["--model", "beta-geometric", "--gone-after", "0"], "gone-after-out-of-range"],
  [["--ahead", "twelve"], "option-not-whole"],
  [["--ahead", "1000"], "weeks-ahead-out-of-range"],
  [["--not-seen-for", "0"], "not-seen-out-of-range"],
  [["--new-since", "May"], "date-unreadable"],
] as const)("%j is told as %s", async (options, code) => {
  const input = "Name,Date\nNell Arkwright,2027-04-06\nOwen Thrale,2027-04-13\n";
  const seen = await inTerminal(
    ["still-coming", "-", ...(code === "column-twice" ? ["--date", "Date"] : []), ...options],
    { input },
  );
  expect(seen).toMatchObject({ code: 2, out: "" });
  expect(seen.err).toContain(`[${code}]`);
});

test("ten thousand people are answered for, in columns of spaces and without names", async () => {
  const people = comingPeople({ r: 0.25, alpha: 4.4, a: 0.8, b: 2.4 }, 10_000, { newFor: 84, until: 545 }, 5);
  const rows = people.flatMap(({ firstDay, days }, at) =>
    [firstDay, ...days].map((day) => `${String(at).padStart(5, "0")} ${dayText(day)}  1`),
  );
  const { code, out } = await inTerminal(["still-coming", "-", "--until", "1997-09-30", "--json"], {
    input: `${rows.join("\n")}\n`,
  });
  expect(code).toBe(0);
  const { people: answered, parameters, settled, read } = JSON.parse(out);
  expect(answered).toHaveLength(10_000);
  expect(read).toMatchObject({
    separator: " ",
    used: rows.length,
    columns: { person: "column 1", date: "column 2" },
  });
  expect(settled).toBe(true);
  // drawn with 0.25 and 4.4
  expect(parameters.r).toBeCloseTo(0.25, 1);
  expect(Math.abs(parameters.alpha - 4.4)).toBeLessThan(0.5);
});

function dayText(day: number): string {
  return new Date(Date.UTC(1997, 0, 1 + day)).toISOString().slice(0, 10).replaceAll("-", "");
}
