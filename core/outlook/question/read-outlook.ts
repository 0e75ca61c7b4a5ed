import { bad, good, problem, type Result, together } from "#core/words";
import type { HeldSession } from "../happened/held-session.ts";
import { readSessions } from "../happened/read-sessions.ts";
import type { RollGuess } from "../learning/roll-prior.ts";
import { type Beginning, rollRecord } from "../learning/roll-record.ts";
import { readCount, readMean } from "../read-count.ts";
import { LEVEL_SEASON, levelled, seasonOf, USUAL_SEASON } from "../season/season-index.ts";
import type { OutlookDocument } from "./outlook-document.ts";
import type { DatedSession, Outlook } from "./outlook-question.ts";
import { readAheadDates } from "./read-ahead-dates.ts";
import { readFull } from "./read-full.ts";
import { readEveningChoices, readMoneyOf, readNotice } from "./read-outlook-money.ts";
import { readRoll, type RollRead } from "./read-roll.ts";

/** A long record says no more about next year than its last sessions do, and would take long to learn from. */
const MOST_LEARNED = 52;

/** An outlook document as sound values. Problems: those of its parts, all at once, each at its place. */
export function readOutlook(document: OutlookDocument): Result<Outlook> {
  const read = together({
    capacity: readCount(document.capacity, "capacity", "places", { least: 1, most: 1000 }),
    money: readMoneyOf(document),
    roll: readRoll(document),
    season: readSeason(document),
    ahead: readAheadDates(document),
    held: readHeld(document),
    notice: readNotice(document),
    full: readFull(document),
    evenings: readEveningChoices(document),
    seed: readCount(document.seed, "seed", "as a seed", { least: 0, most: 2 ** 31 - 1 }),
  });
  if (!read.ok) return read;
  const { capacity, season, held, roll, evenings, ...rest } = read.value;
  const last = held.at(-1)?.date;
  // what was planned and has been is no longer ahead
  const ahead = read.value.ahead.filter(
    (date) => date === null || last === undefined || date.since(last).days > 0,
  );
  if (ahead.length === 0) return bad(allOver());
  const opensTo = held.length === 0 && !roll.startedBefore ? roll.opensTo : null;
  const latest = held.slice(-MOST_LEARNED);
  const older = held.length - latest.length;
  const record = rollRecord(
    latest,
    latest.map(({ date }) => seasonOf(season.index, date.month)),
    beginningOf(roll, older > 0),
  );
  return good({
    ...rest,
    ...evenings,
    capacity,
    held: latest,
    older,
    season: season.kind,
    guesses: document.guesses,
    roll: {
      guess: guessOf(roll, latest, older > 0, record.opening ?? opensTo),
      alike: roll.alike,
      before: older === 0 && roll.regulars > 0 ? [{ people: roll.regulars, weeks: 0, known: true }] : [],
      record,
      ...(opensTo === null ? {} : { opensTo }),
    },
    ahead: ahead.map(
      (date): DatedSession => ({
        date,
        capacity,
        season: date === null ? 1 : seasonOf(season.index, date.month),
      }),
    ),
  });
}

function beginningOf({ startedBefore, regulars }: RollRead, older: boolean): Beginning {
  if (older || startedBefore) return "running";
  return regulars > 0 ? "with known regulars" : "new";
}

/** Where the class ran before its first session here, the roll is guessed by what the first four showed. */
function guessOf(
  roll: RollRead,
  held: readonly HeldSession[],
  older: boolean,
  opening: number | null,
): RollGuess {
  // none is certain, and nothing to be learned
  const luck = roll.luck === 0 ? null : roll.luck;
  const echo = opening === null || opening === 0 || roll.echo === 0 ? null : roll.echo;
  if (!older && !roll.startedBefore) return { ...roll.rates, onRoll: null, echo, luck };
  const first = held.slice(0, 4).map(({ heads }) => heads);
  const seen = first.reduce((sum, heads) => sum + heads, 0) / Math.max(1, first.length);
  const guessed = (seen - roll.rates.newcomers) / roll.rates.attends;
  return { ...roll.rates, onRoll: Math.max(1, roll.onRoll ?? guessed), echo, luck };
}

function readHeld({ happened, capacity }: OutlookDocument): Result<readonly HeldSession[]> {
  // what is wrong with the usual places is told at them, once
  const places = Number.isInteger(capacity) && capacity >= 1 && capacity <= 1000 ? capacity : 1000;
  const read = readSessions({ sessions: happened, capacity: places });
  if (read.ok) return read;
  return bad(...read.problems.map((it) => ({ ...it, place: it.place.replace(/^sessions/, "happened") })));
}

type SeasonRead = { readonly kind: Outlook["season"]; readonly index: readonly number[] };

function readSeason({ season, year, dates, happened }: OutlookDocument): Result<SeasonRead> {
  const dated = year !== undefined || dates !== undefined || happened.length > 0;
  if (season === undefined) {
    return good(
      dated ? { kind: "usual", index: levelled(USUAL_SEASON) } : { kind: "none", index: LEVEL_SEASON },
    );
  }
  if (season.length !== 12) return bad(notTwelve(season.length));
  const read = together(
    Object.fromEntries(
      season.map((value, month) => [
        String(month),
        readMean(value, `season[${month}]`, "times an ordinary month", { least: 0.05, most: 5 }),
      ]),
    ),
  );
  return read.ok ? good({ kind: "given", index: levelled(season) }) : read;
}

function allOver() {
  const says = "All the sessions planned are over: the last one recorded is as late as they are.";
  const next =
    "Give the dates on which the class is planned next, or leave them out for forty ordinary weeks.";
  return problem("ahead-none", "dates", says, next);
}

function notTwelve(count: number) {
  const says = `The season has ${count} numbers.`;
  return problem("season-not-twelve", "season", says, "Give twelve, January first; 1 is an ordinary month.");
}
