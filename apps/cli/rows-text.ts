import type { DateStyle, NotUsed } from "#core/table";
import type { HowRead } from "./read-table-file.ts";

const MOST_ROWS_TOLD = 20;

const SEPARATORS: Readonly<Record<string, string>> = {
  ",": "commas",
  ";": "semicolons",
  "\t": "tabs",
  "|": "upright strokes",
  " ": "spaces",
};

const CALLED: Readonly<Record<string, string>> = {
  person: "Who",
  surname: "Surname",
  date: "When",
  amount: "Amounts",
  heads: "How many came",
  capacity: "Places",
  turnedAway: "Turned away",
  waiting: "Waiting",
  newcomers: "For the first time",
};

/** How a file was read, and the rows that were not used. */
export function rowsText(
  read: HowRead & { readonly dates: DateStyle; readonly used: number },
  notUsed: readonly NotUsed[],
  told: readonly string[],
): string {
  const { columns, rows, used, blankRows, encoding, separator } = read;
  const blank = blankRows === 0 ? "" : ` ${blankRows} blank.`;
  const uses = Object.entries(columns).map(
    ([use, column]) => `${CALLED[use] ?? use}: ${column}${use === "date" ? orderText(read.dates) : ""}.`,
  );
  return [
    `\nHow the file was read\n`,
    `  ${used} of ${rows} rows used.${blank} ${encoding}, cells parted by ${SEPARATORS[separator] ?? separator}.\n`,
    `  ${uses.join(" ")}\n`,
    ...told.map((it) => `  ${it}\n`),
    ...notUsedText(notUsed),
  ].join("");
}

function orderText(dates: DateStyle): string {
  const first = dates.order === "day-first" ? "the day" : "the month";
  if (dates.written === "serial") return ", days counted by a spreadsheet";
  if (dates.how === "written") return "";
  if (dates.how === "told") return `, ${first} first as you said`;
  const why =
    dates.how === "shown" ? "as the column shows" : "likely by the weekdays or the order of rows: a guess";
  return `, ${first} first, ${why}`;
}

function notUsedText(notUsed: readonly NotUsed[]): readonly string[] {
  if (notUsed.length === 0) return [];
  const lines = notUsed.slice(0, MOST_ROWS_TOLD).map((it) => {
    const where = it.column === "" ? "" : ` ${it.column}`;
    return `  row ${it.row}${where} “${it.value}”: ${it.says}\n`;
  });
  const rest = notUsed.length - MOST_ROWS_TOLD;
  return [`\nRows not used\n`, ...lines, rest > 0 ? `  … and ${rest} more; --json has every one\n` : ""];
}
