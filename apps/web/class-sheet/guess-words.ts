/** How many guesses are named one by one; more would drown the answer. */
const MOST_NAMED = 4;

/** "Rests on 2 guesses: how people pay, other costs." Paths that have no words of their own are only counted. */
export function guessWords(restsOn: string, guesses: readonly string[]): string {
  const named = guesses.map((path) => words[path]);
  if (named.length === 0 || named.length > MOST_NAMED || named.includes(undefined)) return restsOn;
  return `${restsOn.replace(/\.$/, "")}: ${named.join(", ")}.`;
}

const words: Readonly<Record<string, string>> = {
  weekday: "the day",
  start: "when it begins",
  "minutes.setUp": "minutes of setting up",
  "minutes.class": "minutes of the class",
  "minutes.packDown": "minutes of packing away",
  "minutes.travel": "minutes of travel",
  "minutes.preparation": "minutes of preparation",
  "minutes.admin": "minutes of messages and money",
  "costs.travel": "what travel costs",
  "costs.music": "what music costs",
  "costs.cover": "what cover costs",
  "costs.other": "other costs",
  "costs.perHead": "the cost of each person",
  "prices.single": "the single price",
  "prices.passes": "the passes",
  "prices.concession": "the concession",
  "prices.courses": "the courses",
  "prices.payWhatYouCan.floor": "the least of pay what you can",
  "prices.payWhatYouCan.average": "what people then give",
  "prices.monthly.perSession": "the price by the month",
  matsOwned: "how many mats there are",
  ownCap: "the most you want to teach",
  insurerCap: "the most your insurer covers",
  mix: "how people pay",
  heads: "how many come",
  "hire.perHour": "the rate of the hall",
  "hire.perSession": "the rate of the hall",
  "planning.attendance": "how often holders of a pass come",
  "planning.confidence": "how many of them should use it up",
  "planning.dispersion": "how uneven evenings are",
  "planning.termEvenings": "the evenings of a term",
  "planning.beliefs": "what you believe of other prices",
  "planning.target.taxShare": "what tax takes",
  "planning.studio": "what the studio offers",
  "outlook.roll.newcomers": "how many are new each week",
  "outlook.roll.stays": "how many of them stay",
  "outlook.roll.attends": "how often regulars come",
  "outlook.roll.leaves": "how many regulars stop",
  "outlook.opening.turnUp": "how many of those accepted come",
  "outlook.opening.returns": "how many come again",
  "outlook.notice.days": "the days of notice",
  "outlook.notice.term": "the sessions of a term",
  "outlook.season": "the seasons of the year",
  "year.from": "when the year begins",
  "year.until": "when the year ends",
  "year.closures": "the days without class",
  "year.fixedPerYear": "the costs of the year",
};
