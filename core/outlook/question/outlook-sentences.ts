import { type AmountWriter, chanceText } from "#core/price";
import type { Remedy } from "../decide/second-class.ts";
import type { Choice } from "../decide/tonight.ts";
import { counted, shortDecimal } from "../opening/opening-words.ts";
import { adviceSentences } from "./advice-sentences.ts";
import type { OutlookFound } from "./outlook-found.ts";
import { exactAmount } from "./outlook-json.ts";
import type { EveningChoice, Outlook } from "./outlook-question.ts";

export type Amounts = (minor: number) => string;

/** The answer first: what to do, then what lies ahead, then how far it can be trusted. */
export function outlookSentences(
  outlook: Outlook,
  found: OutlookFound,
  write: AmountWriter,
): readonly string[] {
  const { money } = outlook;
  const amounts: Amounts = (amount) => (money === null ? "" : write(exactAmount(amount), money.currency));
  return [
    ...adviceSentences(outlook, found, amounts),
    aheadSentence(outlook, found),
    ...moneySentences(found, amounts),
    plateauSentence(found),
    ...choiceSentences("tonight", outlook.tonight, found.tonight, amounts),
    ...choiceSentences("cover", outlook.cover, found.cover, amounts),
    ...remedySentences(found.remedies, amounts),
    learnedSentence(outlook, found),
    ...openingSentences(outlook),
    ...caveats(outlook, found),
  ];
}

function aheadSentence({ ahead }: Outlook, { heads }: OutlookFound): string {
  const { length } = ahead;
  const band = `${Math.round(heads.low)} to ${Math.round(heads.high)}`;
  const each = shortDecimal(heads.mean / length);
  return `The ${counted(length, "session")} ahead bring about ${Math.round(heads.mean)} people on mats in all, ${each} a session (eight chances of ten: ${band} in all).`;
}

function moneySentences(found: OutlookFound, amounts: Amounts): readonly string[] {
  const { money, breakEven, plateauChance, notices } = found;
  if (money === null) return [];
  const { mean, low, high } = money.contribution;
  const leave = `They leave about ${amounts(mean)} together (${amounts(low)} to ${amounts(high)})`;
  const loss = `the chance that they cost more than they bring is ${chanceText(money.chanceOfLoss)}`;
  const pays =
    breakEven === null
      ? "A person brings no more than she costs, so no number of people pays for a session."
      : `${breakEven === 1 ? "1 person pays" : `${breakEven} people pay`} for a session.`;
  // with a notice the advice has it
  const chance =
    breakEven === null || plateauChance === null || notices.length > 0
      ? []
      : [
          `The chance that an ordinary week comes to that is ${chanceText(plateauChance)}, after two teaching years.`,
        ];
  return [`${leave}; ${loss}.`, pays, ...chance];
}

function plateauSentence({ learned }: OutlookFound): string {
  const { mean, low, high } = learned.plateau;
  return `After two teaching years an ordinary week would have ${shortDecimal(mean)} people who want to come (${shortDecimal(low)} to ${shortDecimal(high)}).`;
}

function choiceSentences(
  kind: "tonight" | "cover",
  asked: EveningChoice | null,
  choice: Choice | null,
  amounts: Amounts,
): readonly string[] {
  if (asked === null || choice === null) return [];
  const { does, cancels } = choice;
  const booked = asked.booked === null ? "" : `${asked.booked} booked, `;
  const who = `${booked}${shortDecimal(asked.evening.expected)} expected`;
  const act = kind === "cover" ? ["Have it covered", "cover"] : ["Run it", "running it"];
  const lead = does >= cancels ? act[0] : "Cancel it";
  return [
    `${lead} (${who}): ${act[1]} leaves ${amounts(does)}, cancelling ${amounts(cancels)}.`,
    ...(kind === "cover" ? ["Ask the hall whether somebody else may teach under your hire."] : []),
  ];
}

const remedyNames: Readonly<Record<Remedy["kind"], string>> = {
  "tighter plan": "a tighter mat plan",
  "released absences": "giving known absences to others",
  "price rise": "the small rise",
  "bigger hall": "the bigger hall",
  "second class": "a second class",
};

function remedySentences(remedies: readonly Remedy[], amounts: Amounts): readonly string[] {
  if (remedies.length === 0) return [];
  const each = remedies.map(({ kind, gain }) => `${remedyNames[kind]} ${amounts(gain)}`).join(", ");
  return [`For full evenings, the cheaper things first, each a session: ${each}.`];
}

function learnedSentence({ held, older }: Outlook, { learned }: OutlookFound): string {
  const sessions = held.length + older;
  if (sessions === 0)
    return "Nothing has happened yet: all of it rests on guesses, which weigh as much as four weeks.";
  const latest = older > 0 ? `, the latest ${held.length} of them in full` : "";
  return `Learned from ${counted(sessions, "session")}${latest}, with draws that are worth ${Math.floor(learned.effective)}.`;
}

function openingSentences({ roll }: Outlook): readonly string[] {
  if (roll.opensTo !== undefined) {
    return [
      `The first session ahead is the opening, to which about ${shortDecimal(roll.opensTo)} are expected.`,
    ];
  }
  const { opening } = roll.record;
  if (opening === null || opening === 0) return [];
  const people = opening === 1 ? "1 person" : `${opening} people`;
  return [
    `The first session is taken as the opening: its ${people} may stay, but say nothing of how many are new in an ordinary week.`,
  ];
}

// with fewer effective draws the ends of a band are uncertain by more than a person
const FEW_DRAWS = 60;
// a term's holiday is two weeks; five without a session are more than that
const LONG_GAP_DAYS = 35;

function caveats({ season, held, guesses }: Outlook, { learned }: OutlookFound): readonly string[] {
  const gaps = held.filter(({ date }, at) => {
    const before = held[at - 1];
    return before !== undefined && before.date.until(date).days > LONG_GAP_DAYS;
  });
  return [
    ...(season === "usual" ? ["The seasons of the year are those of a usual class, a guess."] : []),
    ...(gaps.length > 0
      ? [
          `Weeks without a session before ${gaps.map(({ date }) => date.toString()).join(", ")} count for nothing.`,
        ]
      : []),
    ...(learned.effective < FEW_DRAWS
      ? ["What happened is so unlike the guesses that the bands are rough: look at the guesses again."]
      : []),
    ...(guesses.length > 0
      ? [`Rests on ${counted(guesses.length, "guess").replace("guesss", "guesses")}.`]
      : []),
  ];
}
