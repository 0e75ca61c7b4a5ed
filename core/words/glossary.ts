/** One word for one thing. The left word is used in code and documents; a locale may show its twin. */
const twins = {
  hire: "rental",
  hirer: "renter",
  "waiting list": "waitlist",
  cover: "sub",
  "cover teacher": "substitute",
  place: "spot",
  "booking clerk": "facility coordinator",
  caretaker: "custodian",
} as const;

export type TwinWord = keyof typeof twins;
export type Locale = "en-GB" | "en-US";

/** The word a locale shows: "hire" is "rental" in en-US. */
export function word(term: TwinWord, locale: Locale): string {
  return locale === "en-US" ? twins[term] : term;
}
