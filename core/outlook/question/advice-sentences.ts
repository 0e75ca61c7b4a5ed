import { chanceText } from "#core/price";
import { FEWEST_SESSIONS, FIRM_SESSIONS, type KeepAdvice } from "../decide/keep-or-close.ts";
import { counted } from "../opening/opening-words.ts";
import type { NoticeLook, OutlookFound } from "./outlook-found.ts";
import type { Outlook } from "./outlook-question.ts";

/** What to do at the next date on which the hall can be given notice, and why. */
export function adviceSentences(
  outlook: Outlook,
  found: OutlookFound,
  amounts: (minor: number) => string,
): readonly string[] {
  const [first] = found.notices;
  if (first === undefined) return [];
  if (first.advice.kind === "too early") return [tooEarly(outlook)];
  return [
    `${lead(first.advice)}${when(first)}.`,
    reason(outlook, first, found, amounts),
    ...(first.advice.firm ? [] : [notFirm(outlook)]),
    ...later(found.notices),
  ];
}

function tooEarly({ held, older }: Outlook): string {
  const count = held.length + older;
  return `Too early to say: ${counted(count, "session")} of at least ${FEWEST_SESSIONS}. Give it time.`;
}

function lead({ kind, firm }: KeepAdvice): string {
  switch (kind) {
    case "keep":
      return firm ? "Keep the class" : "Keep the class for now";
    case "change":
      return "Change something before you decide: the price, the hall, the hour, or how people hear of it";
    case "close":
      return firm ? "Close the class" : "It leans to closing";
    case "too early":
      return "Too early to say";
  }
}

function when({ date }: NoticeLook): string {
  return date === null ? "" : ` (notice on ${date.toString()})`;
}

function reason(
  { capacity }: Outlook,
  { sessions, goingOn, otherUse, exitCost }: NoticeLook,
  { plateauChance, worthWhile }: OutlookFound,
  amounts: (minor: number) => string,
): string {
  const term = `the ${counted(sessions, "session")} after the notice are expected to leave ${amounts(goingOn)}, ending it ${amounts(otherUse - exitCost)}`;
  if (worthWhile === null) return `No number of people pays for a session, and ${term}.`;
  if (worthWhile > capacity)
    return `It needs ${worthWhile} people and there are ${capacity} places, and ${term}.`;
  const people = worthWhile === 1 ? "1 person" : `${worthWhile} people`;
  return `The chance that it comes to the ${people} it needs is ${chanceText(plateauChance ?? 0)}, and ${term}.`;
}

function notFirm({ held, older }: Outlook): string {
  const count = held.length + older;
  const intake = held.some(({ date }) => date.month === 1 || date.month === 9);
  const weeks = count < FIRM_SESSIONS ? `${counted(count, "session")} of ${FIRM_SESSIONS}` : "";
  const begin = intake ? "" : "no January or September yet, when people begin";
  return `That is early: ${[weeks, begin].filter((it) => it !== "").join(", ")}.`;
}

/** Where a later notice would be advised otherwise, as it looks now. */
function later(notices: readonly NoticeLook[]): readonly string[] {
  const [first] = notices;
  const other = notices.find(({ advice }) => advice.kind !== first?.advice.kind);
  if (other === undefined || other.date === null) return [];
  return [`By what is known now, on ${other.date.toString()} it would be: ${other.advice.kind}.`];
}
