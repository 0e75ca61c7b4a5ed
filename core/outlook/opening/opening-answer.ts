import { type AmountWriter, plainAmount, type Reply, withoutNoise } from "#core/price";
import { good, type Result, readDocument } from "#core/words";
import { acceptAtMost } from "./accept-at-most.ts";
import { costView, nightOf } from "./cost-view.ts";
import { asMuchAs, learnedShare } from "./learned-shares.ts";
import { openingDocumentSchema } from "./opening-document.ts";
import { type OpeningJson, openingJson } from "./opening-json.ts";
import type { LearnedOpening, Opening, OpeningFound } from "./opening-types.ts";
import { readOpening } from "./read-opening.ts";
import { stayerWorth } from "./stayer-worth.ts";

/**
 * Reads an opening document and answers how many to accept, what the night is likely to look like, the number by
 * cost, who of the waiting list finds a mat, and what the opening taught. Problems: those of the document.
 */
export function openingAnswer(input: unknown, write: AmountWriter = plainAmount): Result<Reply<OpeningJson>> {
  const read = readDocument(openingDocumentSchema, input);
  if (!read.ok) return read;
  const opening = readOpening(read.value.value);
  if (!opening.ok) return opening;
  const found = openingFound(opening.value);
  return good({ json: withoutNoise(openingJson(opening.value, found, write)), unused: read.value.unused });
}

function openingFound(opening: Opening): OpeningFound {
  const { accepting, costs, stayer } = opening;
  const accept = acceptAtMost(accepting);
  return {
    accept,
    alone: acceptAtMost({ ...accepting, together: { kind: "alone" } }),
    nights: nights(opening, accept),
    night: nightOf(accepting, accept),
    next: nightOf(accepting, accept + 1),
    waiting: waitingChances(opening, accept),
    byCost: costs === null ? null : costView(accepting, costs),
    learned: learnedFrom(opening),
    worth: stayer === null ? null : stayerWorth(stayer),
  };
}

/** A few numbers about the one to accept, so that she sees what one more or fewer would mean. */
function nights({ accepting }: Opening, accept: number): OpeningFound["nights"] {
  const last = Math.min(accept + 4, accepting.hardStop ?? Number.POSITIVE_INFINITY);
  const first = Math.max(0, accept - 4);
  return Array.from({ length: last - first + 1 }, (_, step) => nightOf(accepting, first + step));
}

// nobody stands in the hall's porch behind four others
const WAITING_SHOWN = 5;

/** The chance of a mat for the first, second … of the waiting list who comes to the door all the same. */
function waitingChances({ accepting }: Opening, accept: number): readonly number[] {
  return Array.from({ length: WAITING_SHOWN }, (_, before) => {
    const room = accepting.room - 1 - before;
    return room < 0 ? 0 : 1 - nightOf({ ...accepting, room }, accept).chanceOver;
  });
}

function learnedFrom({ accepting, happened, returns }: Opening): LearnedOpening | null {
  if (happened === null) return null;
  const { accepted, came, returned } = happened;
  const told = (people: number): number => asMuchAs(people, accepting.together);
  const share = accepted === 0 ? 0 : came / accepted;
  const turnUp = learnedShare(accepting.turnUp, told(accepted) * share, told(accepted));
  return {
    turnUp,
    returns: returned === null ? null : learnedShare(returns, returned, came),
    acceptNext: acceptAtMost({ ...accepting, turnUp: turnUp.mean }),
  };
}
