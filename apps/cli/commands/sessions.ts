import { headsShape, type HeadsRow, readHeads } from "#core/table";
import { bad, good, problem, type Result } from "#core/words";
import type { Command, Given } from "../command.ts";
import { asOption, readTableFile, rowsUnusable, tableOptions } from "../read-table-file.ts";
import { rowsText } from "../rows-text.ts";
import { textTable } from "../text-table.ts";

export const sessions: Command = {
  name: "sessions",
  summary: "what really happened, from a file of sessions with how many came",
  words: ["SESSIONS.csv"],
  options: {
    ...tableOptions,
    heads: { value: "COLUMN", says: "the column that says how many came, by its name or its number from 1" },
    capacity: { value: "COLUMN", says: "the column of places" },
    "turned-away": { value: "COLUMN", says: "the column of those who were told that it was full" },
    waiting: { value: "COLUMN", says: "the column of those who waited and got no place" },
    newcomers: { value: "COLUMN", says: "the column of those who were there for the first time" },
    places: { value: "NUMBER", says: "places on an ordinary evening, where the file does not say" },
  },
  details: `
SESSIONS.csv has a session in each row: its date and how many came, and if you
like the places, who was turned away or waited, and who was new; - reads
standard input. Any separator and encoding will do, and dates are written as
they are. Rows that cannot be used are listed with their number and why. With
--json the answer is a document that hallful demand takes.`,
  run: async (given, world) => {
    const places = readPlaces(given);
    if (!places.ok) return places;
    const [name = "-"] = given.words;
    const file = await readTableFile(name, given, world, headsShape);
    if (!file.ok) return file;
    const { table, columns, order, read } = file.value;
    const found = readHeads(table, columns, order, places.value);
    if (!found.ok) return bad(...found.problems.map(asOption));
    const { notUsed, dates, sessions: held } = found.value;
    if (held.length === 0) return bad(rowsUnusable(notUsed));
    const howRead = { ...read, dates, used: held.length };
    const usual = places.value === undefined ? {} : { capacity: places.value };
    return good({
      text: `${sessionsTable(held)}${rowsText(howRead, notUsed, [])}`,
      json: { ...usual, sessions: held.map(({ row: _row, ...session }) => session), read: howRead, notUsed },
    });
  },
};

/** Problem: "option-not-places". */
function readPlaces({ values }: Given): Result<number | undefined> {
  const text = values["places"];
  if (text === undefined) return good(undefined);
  if (/^\d{1,4}$/.test(text) && Number(text) >= 1 && Number(text) <= 1000) return good(Number(text));
  const says = `“${text.slice(0, 40)}” is not a number of places.`;
  return bad(problem("option-not-places", "--places", says, "Give a whole number from 1 to 1000."));
}

function sessionsTable(held: readonly HeadsRow[]): string {
  const rows = held.map(({ date, heads, capacity, turnedAway, waiting, newcomers, cancelled }) => [
    date,
    cancelled === true ? "cancelled" : String(heads),
    ...[capacity, turnedAway, waiting, newcomers].map((count) => (count === undefined ? "" : String(count))),
  ]);
  return textTable([["", "came", "places", "turned away", "waiting", "new"], ...rows]);
}
