export type DecimalSign = "." | ",";

/** Whether a column writes twelve and a half as 12.5 or 12,5, by what it shows; "." where it shows nothing. */
export function decimalSignOf(texts: readonly string[]): DecimalSign {
  let commas = 0;
  let points = 0;
  for (const text of texts) {
    const digits = onlyFigures(text);
    // behind the last sign: two signs, or not the three digits of a thousand
    if (/\d\.\d{3},\d+$|\d,(?:\d{1,2}|\d{4,})$/.test(digits)) commas += 1;
    if (/\d,\d{3}\.\d+$|\d\.(?:\d{1,2}|\d{4,})$/.test(digits)) points += 1;
  }
  return commas > points ? "," : ".";
}

/**
 * A number as people write it: "1,234.50", "1.234,50", "£12", "12.50 GBP", "(4.00)" for −4.
 * undefined for anything else, never a part of a text that only begins with a number.
 */
export function readAnyNumber(text: string, sign: DecimalSign): number | undefined {
  const figures = onlyFigures(text);
  const thousands = sign === "." ? "," : ".";
  const whole = figures.replace(/^\((.+)\)$/, "-$1");
  const pattern =
    sign === "."
      ? /^[-+]?(?:\d+|\d{1,3}(?:,\d{3})+)(?:\.\d*)?$/
      : /^[-+]?(?:\d+|\d{1,3}(?:\.\d{3})+)(?:,\d*)?$/;
  if (!pattern.test(whole)) return undefined;
  const value = Number(whole.replaceAll(thousands, "").replace(",", "."));
  return Number.isFinite(value) ? value : undefined;
}

/** Without spaces, the signs of currencies and their three letters before or behind; the true minus made a plain one. */
function onlyFigures(text: string): string {
  return text
    .slice(0, 60)
    .replaceAll(/[\s\u00a0\u202f'’\p{Sc}]/gu, "")
    .replace(/^(-?)[A-Z]{3}(?=[\d(-])/, "$1")
    .replace(/(?<=[\d)])[A-Z]{3}$/, "")
    .replace("−", "-");
}
