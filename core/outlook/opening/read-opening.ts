import { bad, good, problem, readAmount, type Result, together } from "#core/words";
import { readCount, readShare } from "../read-count.ts";
import { readCurrencyFor } from "../read-currency-for.ts";
import type { Accepting } from "./accept-at-most.ts";
import type { OpeningCosts } from "./cost-view.ts";
import type { OpeningDocument } from "./opening-document.ts";
import { readHappened } from "./read-happened.ts";
import { readStayer } from "./read-stayer.ts";
import type { Limit, Opening } from "./opening-types.ts";
import type { Together } from "./turn-up.ts";

const PEOPLE = { least: 0, most: 1000 };
/** Any two people as alike as this when several come in pairs: a planning assumption, trade F14. */
export const SEVERAL_PAIRS = 0.05;

/**
 * An opening document as sound values. Problems: "count-out-of-range", "count-not-whole", "share-out-of-range",
 * "risk-out-of-range", "room-none", "came-more-than-accepted", "currency-missing" and those of money.
 */
export function readOpening(document: OpeningDocument): Result<Opening> {
  const read = together({
    room: readRoom(document),
    turnUp: readShare(document.turnUp, "turnUp", "A turn-up"),
    together: readTogether(document.pairs),
    risk: readRisk(document.risk),
    costs: readCosts(document),
    happened: readHappened(document),
    returns: readShare(document.returns, "returns", "A share who come again"),
    stayer: readStayer(document),
  });
  if (!read.ok) return read;
  const { room, turnUp, risk, costs, happened, returns, stayer } = read.value;
  const accepting: Accepting = {
    room: room.room,
    hardStop: room.hardStop,
    turnUp,
    together: read.value.together,
    risk,
    paid: document.paid,
  };
  return good({ accepting, limit: room.limit, costs, happened, returns, stayer, guesses: document.guesses });
}

type Room = { readonly room: number; readonly hardStop: number | null; readonly limit: Limit };

/** The least of what limits the people who take part, and which it is; the mats where it is a tie. */
function readRoom(document: OpeningDocument): Result<Room> {
  const { ownCap, insurerCap, postedCapacity } = document;
  const read = together({
    mats: readCount(document.mats, "mats", "mats", PEOPLE),
    ownCap: readOptional(ownCap, "ownCap"),
    insurerCap: readOptional(insurerCap, "insurerCap"),
    posted: readOptional(postedCapacity, "postedCapacity"),
    notOnMats: readCount(document.notOnMats, "notOnMats", "people not on mats", PEOPLE),
  });
  if (!read.ok) return read;
  const { mats, posted, notOnMats } = read.value;
  const hardStop = posted === null ? null : Math.max(0, posted - notOnMats);
  const limits: readonly (readonly [Limit, number | null])[] = [
    ["mats", mats],
    ["own cap", read.value.ownCap],
    ["insurer", read.value.insurerCap],
    ["posted number", hardStop],
  ];
  const room = Math.min(...limits.map(([, count]) => count ?? Number.POSITIVE_INFINITY));
  const limit = limits.find(([, count]) => count === room)?.[0] ?? "mats";
  return room > 0 ? good({ room, hardStop, limit }) : bad(noRoom());
}

function readOptional(value: number | undefined, place: string): Result<number | null> {
  return value === undefined ? good(null) : readCount(value, place, "people", { least: 0, most: 100_000 });
}

function noRoom() {
  const says = "There is no room for anybody, so nobody can be accepted.";
  return problem("room-none", "mats", says, "Look at the mats, your own cap and the hall’s posted number.");
}

function readTogether(pairs: boolean | number): Result<Together> {
  if (pairs === false || pairs === 0) return good({ kind: "alone" });
  if (pairs === true) return good({ kind: "alike", correlation: SEVERAL_PAIRS });
  if (pairs > 0 && pairs < 1) return good({ kind: "alike", correlation: pairs });
  const counted = readCount(pairs, "pairs", "pairs", { least: 0, most: 500 });
  return counted.ok ? good({ kind: "pairs", pairs: counted.value }) : counted;
}

function readRisk(risk: number): Result<number> {
  if (risk > 0 && risk < 1) return good(risk);
  const says = `A risk of ${risk} cannot be meant.`;
  const next =
    risk >= 1 ? `Give ${risk / 100} for ${risk} %.` : "Give a share above 0 and below 1, like 0.05.";
  return bad(problem("risk-out-of-range", "risk", says, next));
}

function readCosts({ costs, currency }: OpeningDocument): Result<OpeningCosts | null> {
  if (costs === undefined) return good(null);
  const known = readCurrencyFor(currency, "costs");
  if (!known.ok) return known;
  return together({
    currency: known,
    turnedAway: readAmount(costs.turnedAway, known.value, "costs.turnedAway"),
    emptyMat: readAmount(costs.emptyMat, known.value, "costs.emptyMat"),
  });
}
