import { type AmountWriter, chanceText } from "#core/price";
import { exactNumber } from "#core/words";
import { MOST_ACCEPTED } from "./accept-at-most.ts";
import type { LearnedShare } from "./learned-shares.ts";
import type { Limit, Opening, OpeningFound } from "./opening-types.ts";
import { counted, shortDecimal, togetherWords } from "./opening-words.ts";

/** The answer first: how many to accept and when to stop; then the night, the cost, what it taught. */
export function openingSentences(
  opening: Opening,
  found: OpeningFound,
  write: AmountWriter,
): readonly string[] {
  return [
    acceptSentence(opening, found),
    stopSentence(opening),
    ...nightSentences(opening, found),
    ...pairsSentences(opening, found),
    ...waitingSentences(opening, found),
    ...costSentences(opening, found, write),
    ...learnedSentences(found),
    ...worthSentences(opening, found, write),
    ...guessSentences(opening),
    "The hall’s posted number, its fire risk assessment and the fire service decide how many may be in the room.",
  ];
}

const limits: Readonly<Record<Limit, string>> = {
  mats: "the mats",
  "own cap": "your own cap",
  insurer: "your insurer’s cap",
  "posted number": "the hall’s posted number",
};

function acceptSentence({ accepting, limit }: Opening, { accept }: OpeningFound): string {
  const room = `there is room for ${accepting.room} by ${limits[limit]}`;
  if (accepting.paid) return `Accept ${accept}: ${room}, and a paid place is a promise.`;
  if (accept === accepting.room)
    return `Accept ${accept}: ${room}, and one more is too likely to be sent home.`;
  if (accept === MOST_ACCEPTED) return `Accept as many as like: ${room}, and so few of them come.`;
  return `Accept ${accept}: ${room}, and ${chanceText(accepting.turnUp)} of those accepted are expected.`;
}

function stopSentence({ accepting }: Opening): string {
  if (accepting.hardStop === null) {
    return "The hall’s posted number is not known: ask for it before you accept more than there are mats.";
  }
  return `At the door stop at ${accepting.hardStop} people besides those not on mats, whatever was accepted.`;
}

function nightSentences({ accepting }: Opening, { accept, night, next }: OpeningFound): readonly string[] {
  const over = `the chance that more than ${accepting.room} come`;
  const come = `About ${shortDecimal(night.expected)} come`;
  if (night.chanceOver === 0) return [`${come}; ${over} is nought.`];
  const stopped = accept === accepting.hardStop || accepting.paid;
  const one = stopped ? "" : ` and would be ${chanceText(next.chanceOver)} with one more`;
  return [`${come}; ${over} is ${chanceText(night.chanceOver)}${one}.`];
}

function pairsSentences({ accepting }: Opening, { accept, alone }: OpeningFound): readonly string[] {
  if (accepting.together.kind === "alone" || alone === accept) return [];
  const words = togetherWords(accepting.together);
  return [`If each decided alone it would be ${alone}: ${words}, so the room is full or empty more often.`];
}

function waitingSentences({ accepting }: Opening, { waiting }: OpeningFound): readonly string[] {
  const first = waiting[0] ?? 0;
  if (accepting.turnUp === 0) return [];
  return [
    `Put the rest on the waiting list: the first of them who comes to the door finds a mat with ${chanceText(first)}, the third with ${chanceText(waiting[2] ?? 0)}.`,
  ];
}

function costSentences(
  { costs }: Opening,
  { byCost, accept }: OpeningFound,
  write: AmountWriter,
): readonly string[] {
  if (costs === null || byCost === null) return [];
  const cost = write(exactNumber(Number(byCost.cost.toFixed(4))), costs.currency);
  const same = byCost.accept === accept ? "the same" : "another number, since it weighs empty mats too";
  return [
    `By what an empty mat and a person sent home cost you it would be ${byCost.accept} (${cost} on average): ${same}.`,
  ];
}

function learnedSentences({ learned }: OpeningFound): readonly string[] {
  if (learned === null) return [];
  const { turnUp, returns, acceptNext } = learned;
  const again =
    returns === null ? [] : [`Of those who came ${shareWords(returns)} come again, by what was seen so far.`];
  const next = `Accept ${acceptNext} at another opening like it.`;
  return [`After what happened the turn-up is ${shareWords(turnUp)}. ${next}`, ...again];
}

function shareWords({ mean, low, high }: LearnedShare): string {
  return `${chanceText(mean)} (eight chances of ten: ${chanceText(low)} to ${chanceText(high)})`;
}

function worthSentences(
  { stayer }: Opening,
  { worth }: OpeningFound,
  write: AmountWriter,
): readonly string[] {
  if (stayer === null || worth === null) return [];
  const amount = write(worth.worth, stayer.currency);
  const ahead = counted(stayer.sessions, "teaching week");
  return [
    `One person who stays comes about ${shortDecimal(worth.visits)} times in ${ahead} and leaves ${amount}, as long as there is a mat for her.`,
  ];
}

function guessSentences({ guesses, happened }: Opening): readonly string[] {
  if (!guesses.includes("turnUp")) return [];
  return happened === null
    ? ["The turn-up is a guess; the first opening will know better."]
    : ["The turn-up began as a guess that weighs as much as ten people."];
}
