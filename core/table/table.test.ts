import { expect, test } from "vitest";
import { chooseColumns, headsShape, visitsShape } from "./choose-columns.ts";
import type { DateOrder } from "./date-order.ts";
import { readHeads } from "./read-heads.ts";
import { readVisits } from "./read-visits.ts";
import { tableOf } from "./table-of.ts";

function rows(text: string) {
  return text.split("\n").map((line) => line.split("|"));
}

function visitsIn(text: string, told?: DateOrder) {
  const table = tableOf(rows(text));
  const columns = chooseColumns(table, visitsShape);
  if (!columns.ok) throw new Error(JSON.stringify(columns.problems));
  const read = readVisits(table, columns.value, told);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { table, ...read.value };
}

test("TABLE-1: every row is a visit, blank, or told with its number, its value and why", () => {
  const text = `Name|Date|Paid
Nell Arkwright|25/04/2027|12,50
|
Total||12,50
Owen Thrale|31/02/2027|3,00
|02/05/2027|4,00
Owen Thrale|02/05/2027|-4,00
Owen Thrale|soon|4,00
Owen Thrale||4,00
Owen Thrale|05/23/2027|4,00
Owen Thrale|09/05/2027|4|00
${Array.from({ length: 12 }, (_, at) => `Iris Quill|${at + 13}/06/2027|8,00`).join("\n")}`;
  const { table, visits, notUsed } = visitsIn(text);
  expect(table.blankRows).toEqual([3]);
  expect(visits[0]).toEqual({ row: 2, person: "Nell Arkwright", date: "2027-04-25" });
  expect(notUsed.map(({ row, column, value, why }) => [row, column, value, why])).toEqual([
    [4, "Name", "Total", "total"],
    [5, "Date", "31/02/2027", "unreadable"],
    [6, "Name", "", "missing"],
    [7, "Paid", "-4,00", "refund"],
    [8, "Date", "soon", "unreadable"],
    [9, "Date", "", "missing"],
    [10, "Date", "05/23/2027", "other-order"],
    [11, "", "Owen Thrale | 09/05/2027 | 4 | 00", "too-many-cells"],
  ]);
  expect(visits.length + notUsed.length + table.blankRows.length + 1).toBe(text.split("\n").length);
});

test("TABLE-2: names are found below a title, and the title is told", () => {
  const { table, visits, notUsed } = visitsIn("Tuesday register\n\nWho|When\nNell|2027-04-06");
  expect(table.names).toEqual(["Who", "When"]);
  expect(visits).toEqual([{ row: 4, person: "Nell", date: "2027-04-06" }]);
  expect(notUsed.map(({ row, why }) => [row, why])).toEqual([[1, "above-the-names"]]);
});

test("TABLE-2: a table without names is read from its first row", () => {
  const { table, visits } = visitsIn("0004|19970101|29.33\n0004|19970118|29.73\n0021|19970101|63.34");
  expect(table.names).toBeUndefined();
  expect(visits.map(({ person, date }) => `${person} ${date}`)).toEqual([
    "0004 1997-01-01",
    "0004 1997-01-18",
    "0021 1997-01-01",
  ]);
});

test("TABLE-2: a value that cannot be read in the first row does not make it a row of names", () => {
  expect(tableOf(rows("Nell|2027-04-06\nOwen|2027-04-06")).names).toBeUndefined();
  expect(tableOf(rows("Nell|someday\nOwen|2027-04-06"), "no").rows).toHaveLength(2);
});

test("TABLE-8: a person is the same however her name is written, and comes once on a day", () => {
  const { visits, notUsed, writtenTwoWays } = visitsIn(
    "Name|Date\nNell Arkwright|2027-04-06\nnell  arkwright|2027-04-13\nNELL ARKWRIGHT|2027-04-13",
  );
  expect(visits.map(({ person, date }) => [person, date])).toEqual([
    ["Nell Arkwright", "2027-04-06"],
    ["Nell Arkwright", "2027-04-13"],
  ]);
  expect(notUsed).toMatchObject([
    { row: 4, why: "twice", says: "The same person on the same day as in row 3." },
  ]);
  expect(writtenTwoWays).toEqual(["Nell Arkwright"]);
});

test("TABLE-7: columns are suggested by their names and values", () => {
  const table = tableOf(
    rows(
      "Class name|Hall|Visited on|Student|Fee\nSlow|Tithe Barn|06/04/2027|Nell|9\nSlow|Tithe Barn|13/04/2027|Owen|9",
    ),
  );
  expect(chooseColumns(table, visitsShape)).toEqual({ ok: true, value: { date: 2, person: 3, amount: 4 } });
  const heads = tableOf(rows("date|heads|capacity|turned away|waiting|new\n2027-04-06|12|14|0|1|2"));
  expect(chooseColumns(heads, headsShape)).toEqual({
    ok: true,
    value: { date: 0, heads: 1, capacity: 2, turnedAway: 3, waiting: 4, newcomers: 5 },
  });
  expect(chooseColumns(tableOf(rows("2027-04-06|12\n2027-04-13|9")), headsShape)).toEqual({
    ok: true,
    value: { date: 0, heads: 1 },
  });
});

test("TABLE-7: of columns of numbers the people are those that stand once on a day", () => {
  // sixty visits of twenty people on twenty days, three a day; the third column counts things, one or two
  const text = Array.from(
    { length: 60 },
    (_, at) => `${100 + ((at * 7) % 20)}|199701${10 + Math.floor(at / 3)}|${1 + (at % 2)}|${at}.50`,
  );
  const table = tableOf(rows(text.join("\n")));
  expect(chooseColumns(table, visitsShape)).toEqual({ ok: true, value: { date: 1, person: 0 } });
});

test("TABLE-7: first name and surname in two columns are one person, so that two of one first name stay two", () => {
  const { visits } = visitsIn(
    "Booked|First name|Last name|Class date\n01/03/2027|Nell|Arkwright|06/04/2027\n02/03/2027|Nell|Oakes|06/04/2027\n25/03/2027|Nell||13/04/2027",
  );
  expect(visits.map(({ person, date }) => [person, date])).toEqual([
    ["Nell Arkwright", "2027-04-06"],
    ["Nell Oakes", "2027-04-06"],
    ["Nell", "2027-04-13"],
  ]);
});

test("TABLE-7: the day of a birth, a booking or a payment is not that of a visit, where there is another", () => {
  const table = tableOf(rows("Name|Date of birth|Paid on|Attended\nNell|01/02/1980|01/04/2027|13/04/2027"));
  expect(chooseColumns(table, visitsShape)).toMatchObject({ value: { person: 0, date: 3 } });
});

test("TABLE-7: a column that is named or numbered is taken instead", () => {
  const table = tableOf(rows("Name|Email|Date\nNell|nell@example.org|2027-04-06"));
  expect(chooseColumns(table, visitsShape, { person: "email" })).toEqual({
    ok: true,
    value: { person: 1, date: 2 },
  });
  expect(chooseColumns(table, visitsShape, { person: "2" })).toEqual({
    ok: true,
    value: { person: 1, date: 2 },
  });
});

test("TABLE-7: what is not there, meant twice or cannot be guessed is told with the columns there are", () => {
  const table = tableOf(rows("Name|Note\nNell|late\nOwen|early"));
  expect(chooseColumns(table, visitsShape)).toMatchObject({
    problems: [
      { code: "column-unclear", place: "date", next: "Say which it is; there are: 1 Name, 2 Note." },
    ],
  });
  expect(chooseColumns(table, visitsShape, { date: "Day" })).toMatchObject({
    problems: [{ code: "column-unknown" }],
  });
  expect(chooseColumns(table, visitsShape, { date: "9" })).toMatchObject({
    problems: [{ code: "column-unknown" }],
  });
  expect(chooseColumns(table, visitsShape, { date: "Note", person: "2" })).toMatchObject({
    problems: [{ code: "column-twice", place: "person" }],
  });
  expect(chooseColumns(tableOf(rows("Name|Date")), visitsShape)).toMatchObject({
    problems: [{ code: "table-empty" }],
  });
});

function headsIn(text: string) {
  const table = tableOf(rows(text));
  const columns = chooseColumns(table, headsShape);
  if (!columns.ok) throw new Error(JSON.stringify(columns.problems));
  const read = readHeads(table, columns.value);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

test("TABLE-9: sessions come by date, and a count that nobody can mean is told", () => {
  const { sessions, notUsed } = headsIn(`Date|Heads|Capacity|Turned away
13/04/2027|9|14|
06/04/2027|14|14|2
20/04/2027|-1|14|
27/04/2027|7.5|14|
04/05/2027|16|14|
11/05/2027|many|14|
18/05/2027||14|
25/05/2027|0|14|
13/04/2027|9|14|
06/04/2027|3|14|
Total|36||`);
  expect(sessions).toEqual([
    { row: 3, date: "2027-04-06", heads: 14, capacity: 14, turnedAway: 2 },
    { row: 2, date: "2027-04-13", heads: 9, capacity: 14 },
    { row: 9, date: "2027-05-25", heads: 0, capacity: 14 },
  ]);
  expect(notUsed.map(({ row, value, why }) => [row, value, why])).toEqual([
    [4, "-1", "absurd"],
    [5, "7.5", "absurd"],
    [6, "16", "over-capacity"],
    [7, "many", "unreadable"],
    [8, "", "missing"],
    [10, "13/04/2027 | 9 | 14", "twice"],
    [11, "06/04/2027 | 3 | 14", "twice"],
    [12, "Total", "total"],
  ]);
  expect(notUsed[6]?.says).toBe(
    "The date stands in row 3 already, with 14; two sessions on a day belong in two tables.",
  );
});

test("TABLE-9: a session that was cancelled is one, and a count that the row itself contradicts is told", () => {
  const { sessions, notUsed } = headsIn(`Date|Heads|Capacity|New
13/04/2027|Cancelled, snow|14|
20/04/2027|6|0|
27/04/2027|6|14|7
04/05/2027|6|14|2`);
  expect(sessions).toEqual([
    { row: 2, date: "2027-04-13", heads: 0, cancelled: true },
    { row: 5, date: "2027-05-04", heads: 6, capacity: 14, newcomers: 2 },
  ]);
  expect(notUsed.map(({ row, why, says }) => [row, why, says])).toEqual([
    [3, "absurd", "People are counted whole, from 1 to 1000."],
    [4, "absurd", "Only 6 came in all."],
  ]);
});

test("TABLE-9: where a row has no capacity the usual one counts", () => {
  const table = tableOf(rows("Date|Heads\n2027-04-06|12\n2027-04-13|15"));
  const read = readHeads(table, { date: 0, heads: 1 }, undefined, 14);
  expect(read.ok && read.value.notUsed).toMatchObject([
    { row: 3, why: "over-capacity", says: "More came than the 14 that it holds." },
  ]);
});
