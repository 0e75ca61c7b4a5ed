import {
  bad,
  type CurrencyCode,
  good,
  type Minor,
  type Problem,
  problem,
  type Result,
  readAmount,
} from "#core/words";

/** A price nearby, and how many people were counted there if anybody did. */
export type SurveyRow = { readonly where: string; readonly price: Minor; readonly heads: number | null };

export type SurveyDocument =
  | string
  | readonly {
      readonly where?: string | undefined;
      readonly price: string;
      readonly heads?: number | undefined;
    }[];

/**
 * A survey of nearby prices, as rows or as a pasted table with a line for each: where, price, heads. Columns by
 * tab, semicolon, bar or comma; a first line without a figure, with others under it, is taken for headings; signs like £ are dropped.
 * Problems: "survey-line-unreadable", "survey-heads-out-of-range", "currencies-mixed" and those of an amount.
 */
export function readSurvey(
  survey: SurveyDocument,
  currency: CurrencyCode,
  place: string,
): Result<readonly SurveyRow[]> {
  const read =
    typeof survey === "string"
      ? pastedRows(survey).map(({ line, cells }) => readCells(cells, currency, `${place}[${line}]`))
      : survey.map(({ where = "", price, heads }, index) => {
          return readRow(where, price, heads ?? null, currency, `${place}[${index}]`);
        });
  const problems = read.flatMap((row) => (row.ok ? [] : row.problems));
  return problems.length > 0 ? bad(...problems) : good(read.flatMap((row) => (row.ok ? [row.value] : [])));
}

type PastedRow = { readonly line: number; readonly cells: readonly string[] };

/** Lines are counted from 0 as the places of a list are; empty ones are passed over but counted. */
function pastedRows(text: string): readonly PastedRow[] {
  const separator = ["\t", ";", "|"].find((it) => text.includes(it)) ?? ",";
  const rows = text
    .split(/\r?\n/)
    .map((written, line) => ({ line, cells: written.split(separator).map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ""));
  const [first, ...others] = rows;
  const isHeadings = first?.cells.every((cell) => !/\d/.test(cell)) === true && others.length > 0;
  return isHeadings ? others : rows;
}

function readCells(cells: readonly string[], currency: CurrencyCode, place: string): Result<SurveyRow> {
  const [where = "", price = "", heads = "", ...more] = cells;
  if (price === "" || more.some((cell) => cell !== "")) {
    const says = `“${cells.join(" ").slice(0, 60)}” is not a line of where, price and perhaps heads.`;
    const next = "Write it like: Quay Street Mission Room; 9.50; 12.";
    return bad(problem("survey-line-unreadable", place, says, next));
  }
  return readRow(where, price, heads === "" ? null : Number(heads), currency, place);
}

function readRow(
  where: string,
  price: string,
  heads: number | null,
  currency: CurrencyCode,
  place: string,
): Result<SurveyRow> {
  const foreign = foreignProblem(price, currency, `${place}.price`);
  if (foreign !== null) return bad(foreign);
  const amount = readAmount(plainPrice(price), currency, `${place}.price`);
  if (!amount.ok) return amount;
  if (heads === null || (heads > 0 && heads <= 1000)) return good({ where, price: amount.value, heads });
  const says = `${heads} people cannot have been counted there.`;
  const next = "Give a number above 0, or leave it out.";
  return bad(problem("survey-heads-out-of-range", `${place}.heads`, says, next));
}

/** "£8,50" is "8.50". */
function plainPrice(price: string): string {
  return price.replace(/[A-Z]{3}|[£$€¥\s]/g, "").replace(",", ".");
}

const signs: Readonly<Record<string, RegExp>> = {
  "£": /^(GBP|EGP|FKP|GIP|SHP)$/,
  "€": /^EUR$/,
  "¥": /^(JPY|CNY)$/,
};
const dollars = /D$/;

function foreignProblem(price: string, currency: CurrencyCode, place: string): Problem | null {
  const code = /[A-Z]{3}/.exec(price)?.[0];
  const sign = /[£$€¥]/.exec(price)?.[0];
  const fits = sign === undefined || (sign === "$" ? dollars : (signs[sign] ?? dollars)).test(currency);
  if ((code === undefined || code === currency) && fits) return null;
  const says = `${price} is not in ${currency}, like the other prices.`;
  return problem("currencies-mixed", place, says, `Give it in ${currency}, or leave it out.`);
}

export type SurveySummary = {
  readonly count: number;
  readonly least: Minor;
  readonly median: number;
  readonly most: Minor;
};

/** The cheapest, the middle and the dearest of the nearby prices; null when there are none. */
export function surveySummary(rows: readonly SurveyRow[]): SurveySummary | null {
  const prices = rows.map(({ price }) => price).sort((a, b) => a - b);
  const [least, most] = [prices[0], prices.at(-1)];
  if (least === undefined || most === undefined) return null;
  const below = prices[Math.floor((prices.length - 1) / 2)] ?? least;
  const above = prices[Math.floor(prices.length / 2)] ?? most;
  return { count: prices.length, least, median: (below + above) / 2, most };
}
