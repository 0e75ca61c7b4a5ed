import type { Locale } from "#core/words";

const names: Readonly<Record<string, string>> = {
  weekday: "the day of the week",
  start: "the time it begins",
  "minutes.setUp": "the minutes of set-up",
  "minutes.class": "the minutes of the class",
  "minutes.packDown": "the minutes of pack-down",
  "minutes.travel": "the minutes of travel",
  "minutes.preparation": "the minutes of preparation",
  "minutes.admin": "the minutes for messages and money",
  "costs.travel": "what travel costs",
  "costs.music": "what music costs",
  "costs.cover": "what cover costs",
  "costs.other": "the other costs of an evening",
  "costs.perHead": "what each person costs",
  prices: "the prices",
  "prices.single": "the price of a single",
  "prices.passes": "the prices of passes",
  "prices.concession": "the concession price",
  "prices.courses": "the prices of courses",
  "prices.payWhatYouCan": "what people give when they choose",
  "prices.monthly": "the price of a session paid by the month",
  mix: "who pays in which way",
  heads: "how many come",
  matsOwned: "how many mats there are",
  ownCap: "the most you want",
  insurerCap: "the most your insurer covers",
  "planning.attendance": "how often holders of a pass come",
  "planning.confidence": "how many of them should use it up",
  "planning.dispersion": "how unevenly people come",
  "planning.termEvenings": "the evenings of a term",
  "planning.beliefs": "what you believe of other prices",
  "planning.target.taxShare": "what tax takes",
  "planning.studio": "what the studio offers",
  "outlook.roll.newcomers": "how many are new each week",
  "outlook.roll.stays": "how many of them stay",
  "outlook.roll.attends": "how often regulars come",
  "outlook.roll.leaves": "how many regulars stop",
  "outlook.roll.luck": "how much luck an evening has",
  "outlook.opening.turnUp": "how many of those accepted come",
  "outlook.opening.returns": "how many come again",
  "outlook.notice.days": "the days of notice",
  "outlook.notice.term": "the sessions of a term",
  "outlook.season": "the seasons of the year",
  "year.from": "the first day of the year",
  "year.until": "the last day of the year",
  "year.closures": "the closures",
  "year.fixedPerYear": "the fixed costs of a year",
};

/** What a guess is called to a reader: "mix.free" is part of "who pays in which way". */
export function guessName(path: string, locale: Locale): string {
  const found = names[path];
  if (found !== undefined) return found;
  if (path === "hire" || path.startsWith("hire.")) {
    return locale === "en-US" ? "the terms of the rental" : "the terms of the hire";
  }
  const above = path.replace(/(\.[^.[]*|\[\d+\])$/, "");
  return above === path || above === "" ? path : guessName(above, locale);
}
