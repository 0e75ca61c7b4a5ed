import { bad, good, problem, type Result } from "./problem.ts";
import { branded } from "./brand.ts";
import { type Millimetres, MM_PER_FOOT, MM_PER_INCH, MM_PER_METRE } from "./units.ts";

/**
 * 7.25 m is 7250 and is written "7.25 m" or, in feet, "23 ft 9 1/2 in".
 * What is written reads back as the same text: metres to the centimetre, feet to the quarter inch.
 */
export type LengthUnits = "metric" | "feet";

const MM_PER_CENTIMETRE = 10;
const QUARTERS_PER_FOOT = 48;
const MM_PER_QUARTER_INCH = MM_PER_INCH / 4;

/**
 * Reads a length as people write it: "7.25", "7,25 m", "725 cm", "24' 6\"", "24 ft 6 1/2 in", "24-6", "24.5 ft".
 * A bare number is metres or feet by `units`; a unit that is written wins. Rounded to the millimetre.
 * Problems: "length-unreadable", "length-negative", "length-huge" (over a kilometre).
 */
export function parseLength(text: string, units: LengthUnits, place = ""): Result<Millimetres> {
  const tidy = tidied(text);
  const exact = metricLength(tidy, units) ?? feetAndInches(tidy, units);
  if (exact === undefined) {
    const says = tidy === "" ? "The length is empty." : `“${text}” is not a length.`;
    return bad(problem("length-unreadable", place, says, `Write it like ${example[units]}.`));
  }
  if (tidy.startsWith("-") && exact !== 0) {
    const says = `“${text}” is less than nothing.`;
    return bad(problem("length-negative", place, says, "Give a length without a minus sign."));
  }
  if (exact > LONGEST) {
    const says = `“${text}” is longer than a kilometre.`;
    return bad(problem("length-huge", place, says, `Check the unit: write it like ${example[units]}.`));
  }
  return good(branded<Millimetres>(Math.abs(Math.round(exact))));
}

const LONGEST = 1000 * MM_PER_METRE;
const example: Readonly<Record<LengthUnits, string>> = {
  metric: "7.25 m or 725 cm",
  feet: "24 ft 6 in or 24' 6\"",
};

const vulgarFractions: Readonly<Record<string, string>> = {
  "½": " 1/2",
  "¼": " 1/4",
  "¾": " 3/4",
  "⅛": " 1/8",
  "⅜": " 3/8",
  "⅝": " 5/8",
  "⅞": " 7/8",
};

/** One spelling for each sign: straight quotes, a point for the decimal comma, single spaces, lower case. */
function tidied(text: string): string {
  return text
    .toLowerCase()
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => vulgarFractions[sign] ?? sign)
    .replace(/''|[″“”]/g, '"')
    .replace(/[′‘’]/g, "'")
    .replace(/[−–]/g, "-")
    .replace(/(\d),(\d{1,3})(?!\d)/g, "$1.$2")
    .replace(/\s+/g, " ")
    .trim();
}

const METRIC = /^-?(\d+\.?\d*|\.\d+) ?(m|metres?|meters?|cm|mm)?$/;
const millimetresPer: Readonly<Record<string, number>> = { mm: 1, cm: MM_PER_CENTIMETRE };

function metricLength(tidy: string, units: LengthUnits): number | undefined {
  const found = METRIC.exec(tidy);
  if (found === null) return undefined;
  const [, figure = "", unit] = found;
  if (unit === undefined && units === "feet") return undefined;
  return Number(figure) * (millimetresPer[unit ?? "m"] ?? MM_PER_METRE);
}

const NUMBER = String.raw`\d+\.?\d*|\.\d+`;
const FEET = String.raw`(?<feet>${NUMBER}) ?(?:'|ft\.?|foot|feet)`;
const INCH_SIGN = String.raw` ?(?:"|in\.?|inch|inches)`;
const FRACTION = String.raw`(?<over>\d+)\/(?<under>[1-9]\d*)`;
const inchFigures = [`(?<inches>${NUMBER})`, `(?<inches>${NUMBER}) ${FRACTION}`, FRACTION];

/** 24', 6", 24' 6", and 24' 6 where the inch sign is left out after feet */
const signed = [
  FEET,
  ...inchFigures.flatMap((inch) => [
    inch + INCH_SIGN,
    `${FEET} ?-? ?${inch}${INCH_SIGN}`,
    `${FEET} ?-? ?${inch}`,
  ]),
].map((shape) => new RegExp(`^-?${shape}$`));

/** 24.5 and 24-6, only where feet are the habit: in a metric hall 24-6 is more likely a slip */
const unsigned = [
  `(?<feet>${NUMBER})`,
  String.raw`(?<feet>\d+)[- ](?<inches>${NUMBER})`,
  String.raw`(?<feet>\d+)[- ](?<inches>${NUMBER}) ${FRACTION}`,
].map((shape) => new RegExp(`^-?${shape}$`));

function feetAndInches(tidy: string, units: LengthUnits): number | undefined {
  const shapes = units === "feet" ? [...signed, ...unsigned] : signed;
  const parts = shapes.map((shape) => shape.exec(tidy)?.groups).find((groups) => groups !== undefined);
  if (parts === undefined) return undefined;
  const { feet = "0", inches = "0", over = "0", under = "1" } = parts;
  return Number(feet) * MM_PER_FOOT + (Number(inches) + Number(over) / Number(under)) * MM_PER_INCH;
}

/** "7.25 m", or "23 ft 9 1/2 in" to the nearest quarter inch. Takes any millimetres, also below nothing. */
export function formatLength(millimetres: number, units: LengthUnits): string {
  if (units === "metric") return `${metricFigure(millimetres)} m`;
  const { sign, feet, inches, quarters } = inQuarterInches(millimetres);
  const part = quarters === 0 ? "" : (quarterNames[quarters] ?? "");
  const inchText = [inches === 0 && part !== "" ? "" : String(inches), part]
    .filter((it) => it !== "")
    .join(" ");
  return feet === 0 ? `${sign}${inchText} in` : `${sign}${feet} ft ${inchText} in`;
}

const quarterNames = ["", "1/4", "1/2", "3/4"];
const quarterSigns = ["", "¼", "½", "¾"];

/** The same for a dimension on a drawing: "7.25", or "23′ 9½″". */
export function formatLengthShort(millimetres: number, units: LengthUnits): string {
  if (units === "metric") return metricFigure(millimetres);
  const { sign, feet, inches, quarters } = inQuarterInches(millimetres);
  const inchText = `${inches === 0 && quarters > 0 ? "" : inches}${quarterSigns[quarters] ?? ""}″`;
  return feet === 0 ? `${sign}${inchText}` : `${sign}${feet}′ ${inchText}`;
}

function metricFigure(millimetres: number): string {
  const centimetres = Math.round(Math.abs(millimetres) / MM_PER_CENTIMETRE);
  const sign = millimetres < 0 && centimetres > 0 ? "-" : "";
  return `${sign}${(centimetres / 100).toFixed(2)}`;
}

function inQuarterInches(millimetres: number) {
  const all = Math.round(Math.abs(millimetres) / MM_PER_QUARTER_INCH);
  const rest = all % QUARTERS_PER_FOOT;
  return {
    sign: millimetres < 0 && all > 0 ? "-" : "",
    feet: Math.floor(all / QUARTERS_PER_FOOT),
    inches: Math.floor(rest / 4),
    quarters: rest % 4,
  };
}
