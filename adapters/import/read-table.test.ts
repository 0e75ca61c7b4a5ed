import { expect, test } from "vitest";
import { readTable } from "./read-table.ts";

function tableIn(bytes: Uint8Array | string) {
  const read = readTable(typeof bytes === "string" ? new TextEncoder().encode(bytes) : bytes);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

function problemIn(bytes: Uint8Array | string): string | undefined {
  const read = readTable(typeof bytes === "string" ? new TextEncoder().encode(bytes) : bytes);
  return read.ok ? undefined : read.problems[0]?.code;
}

/** Two bytes for each letter, the lower or the higher first. */
function wide(text: string, lowerFirst: boolean): Uint8Array {
  return Uint8Array.from(
    text.split("").flatMap((letter) => {
      const code = letter.charCodeAt(0);
      return lowerFirst ? [code & 255, code >> 8] : [code >> 8, code & 255];
    }),
  );
}

const plain = "Name,Date\nZoë,2027-04-06\nOwen,2027-04-13\n";

test.each([
  ["UTF-8 with its mark", new TextEncoder().encode(`\ufeff${plain}`), "UTF-8"],
  ["UTF-8 without", new TextEncoder().encode(plain), "UTF-8"],
  ["UTF-16 with its mark", wide(`\ufeff${plain}`, true), "UTF-16"],
  ["UTF-16 the other way round", wide(`\ufeff${plain}`, false), "UTF-16"],
  ["UTF-16 without its mark", wide(plain, true), "UTF-16"],
  ["UTF-16 the other way round without its mark", wide(plain, false), "UTF-16"],
  ["Windows-1252", Uint8Array.from(Buffer.from(plain, "latin1")), "Windows-1252"],
] as const)("text in %s is read", (_, bytes, encoding) => {
  const { table, encoding: found } = tableIn(bytes);
  expect(found).toBe(encoding);
  expect(table.names).toEqual(["Name", "Date"]);
  expect(table.rows.map(({ cells }) => cells)).toEqual([
    ["Zoë", "2027-04-06"],
    ["Owen", "2027-04-13"],
  ]);
});

test.each([
  ["comma", ",", "Name,Date,Paid\nNell,2027-04-06,9.50\n"],
  ["semicolon with decimal commas", ";", "Name;Date;Paid\nNell;2027-04-06;9,50\nOwen;2027-04-06;8,00\n"],
  ["tab with commas in names", "\t", "Name\tDate\nArkwright, Nell\t2027-04-06\nThrale, Owen\t2027-04-06\n"],
  ["upright", "|", "Name|Date\nNell|2027-04-06\n"],
  ["spaces", " ", "00004 19970101  2  29.33\n00021 19970101  3   63.34\n"],
  ["said in a first line", ";", "sep=;\nName;Date\nNell;2027-04-06\n"],
] as const)("cells parted by a %s", (_, separator, text) => {
  expect(tableIn(text).separator).toBe(separator);
});

test("a line sep=; counts as a row and is no name", () => {
  const { table } = tableIn("sep=;\r\nName;Date\r\nNell;2027-04-06\r\n");
  expect(table.names).toEqual(["Name", "Date"]);
  expect(table.rows).toEqual([{ row: 3, cells: ["Nell", "2027-04-06"] }]);
});

test("line ends of every kind, and cells in quotes that hold separators, quotes and line ends", () => {
  for (const end of ["\n", "\r\n", "\r"]) {
    const { table } = tableIn(["Name,Date", '"Arkwright, ""Nell""",2027-04-06', "Owen,2027-04-13"].join(end));
    expect(table.rows.map(({ cells }) => cells[0])).toEqual(['Arkwright, "Nell"', "Owen"]);
  }
  const { table } = tableIn('Name,Date\n"Nell\nArkwright",2027-04-06\nOwen,2027-04-13\n');
  // as a spreadsheet counts: a cell of two lines is one row
  expect(table.rows.map(({ row }) => row)).toEqual([2, 3]);
});

test("blank lines are rows that are counted, and the end of the last line is none", () => {
  for (const [text, blank] of [
    ["Name,Date\nNell,2027-04-06\n", []],
    ["Name,Date\n\nNell,2027-04-06\n\n", [2, 4]],
  ] as const) {
    expect(tableIn(text).table.blankRows).toEqual(blank);
  }
});

test("what is no table of text is told by what it is", () => {
  expect(problemIn("")).toBe("table-empty");
  expect(problemIn(" \n\n")).toBe("table-empty");
  expect(problemIn(Uint8Array.of(0x50, 0x4b, 0x03, 0x04, 0x14))).toBe("table-not-text");
  expect(problemIn(Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0))).toBe("table-not-text");
  expect(problemIn("%PDF-1.7")).toBe("table-not-text");
  expect(problemIn(Uint8Array.of(1, 2, 3, 0, 255, 0, 7, 9))).toBe("table-not-text");
  expect(problemIn('Name,Date\nNell,"2027-04-06\nOwen,2027-04-13\n')).toBe("table-quote-open");
});

test("a hundred thousand rows are one table", () => {
  const { table } = tableIn(`Name,Date\n${"Nell,2027-04-06\n".repeat(100_000)}`);
  expect(table.rows).toHaveLength(100_000);
});
