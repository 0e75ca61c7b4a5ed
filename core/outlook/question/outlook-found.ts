import { breakEvenHeads } from "#core/price";
import type { Temporal } from "temporal-polyfill";
import { type LookAhead, lookAhead } from "../ahead/look-ahead.ts";
import { type Band, totalAtLeast, totalBand } from "../ahead/total-band.ts";
import { type KeepAdvice, keepOrClose } from "../decide/keep-or-close.ts";
import { type FullClass, type Remedy, remediesFor } from "../decide/second-class.ts";
import { type Choice, coverOrCancel, runTonight } from "../decide/tonight.ts";
import { type LearnedRoll, learnedRoll } from "../learning/learned-roll.ts";
import type { Outlook, OutlookMoney } from "./outlook-question.ts";

/** What all sessions ahead leave together, in minor units. */
export type YearMoney = {
  readonly takings: Band;
  readonly contribution: Band;
  readonly chanceOfLoss: number;
};

export type NoticeLook = {
  /** null where the sessions ahead have no dates: today */
  readonly date: Temporal.PlainDate | null;
  readonly sessions: number;
  readonly goingOn: number;
  readonly otherUse: number;
  readonly exitCost: number;
  readonly advice: KeepAdvice;
};

export type OutlookFound = {
  readonly learned: LearnedRoll;
  readonly look: LookAhead;
  readonly heads: Band;
  readonly breakEven: number | null;
  /** P(plateau ≥ the heads that pay for the session and its best other use); null without money */
  readonly plateauChance: number | null;
  readonly worthWhile: number | null;
  readonly money: YearMoney | null;
  readonly notices: readonly NoticeLook[];
  readonly remedies: readonly Remedy[];
  readonly tonight: Choice | null;
  readonly cover: Choice | null;
};

/** Works a sound outlook out: what is learned, what lies ahead, and what each choice is worth. */
export function outlookFound(outlook: Outlook): OutlookFound {
  const { roll, ahead, money, notice, capacity, full, tonight, cover } = outlook;
  const learned = learnedRoll(roll, outlook.seed);
  const look = lookAhead(roll, learned.sample, ahead);
  const breakEven = money === null ? null : breakEvenHeads(money.cost, money.margin);
  const worthWhile =
    money === null ? null : breakEvenHeads(money.cost + (notice?.otherUse ?? 0), money.margin);
  const plateauChance = money === null ? null : chanceOfPlateau(learned, worthWhile, capacity);
  return {
    learned,
    look,
    heads: totalBand(look.totals),
    breakEven,
    worthWhile,
    plateauChance,
    money: money === null ? null : yearMoney(look, money),
    notices: money === null || plateauChance === null ? [] : noticesOf(outlook, money, look, plateauChance),
    remedies:
      full === null || money === null ? [] : remediesFor(fullClass(outlook, money, look, learned), full),
    tonight: tonight === null ? null : runTonight({ ...tonight.evening, avoidable: tonight.spent }),
    cover: cover === null ? null : coverOrCancel({ ...cover.evening, fee: cover.spent }),
  };
}

/** Heads that never pay, or that do not fit into the hall, are reached with no chance at all. */
export function chanceOfPlateau(learned: LearnedRoll, heads: number | null, capacity: number): number {
  if (heads === null || heads > capacity) return 0;
  const sum = learned.drawn.reduce((chance, it) => chance + (it.plateau >= heads ? it.weight : 0), 0);
  return Math.min(1, sum);
}

function yearMoney({ totals, sessions }: LookAhead, { margin, yielded, cost }: OutlookMoney): YearMoney {
  const heads = totalBand(totals);
  const each = margin.valueOf();
  const costs = cost * sessions.length;
  const of = (count: number): number => count * each - costs;
  const [worse, better] = each >= 0 ? [heads.low, heads.high] : [heads.high, heads.low];
  return {
    takings: scaled(heads, yielded.valueOf()),
    contribution: { mean: of(heads.mean), low: of(worse), high: of(better) },
    chanceOfLoss: each > 0 ? 1 - totalAtLeast(totals, costs / each) : costs > 0 ? 1 : 0,
  };
}

function scaled({ mean, low, high }: Band, by: number): Band {
  return { mean: mean * by, low: low * by, high: high * by };
}

function noticesOf(
  outlook: Outlook,
  { margin, cost }: OutlookMoney,
  look: LookAhead,
  plateauChance: number,
): readonly NoticeLook[] {
  const { notice, held, older, capacity } = outlook;
  if (notice === null) return [];
  const worthWhile = breakEvenHeads(cost + notice.otherUse, margin);
  const canPay = worthWhile !== null && worthWhile <= capacity;
  const intakeSeen = held.some(({ date }) => date.month === 1 || date.month === 9);
  return noticeDates(outlook).flatMap((date): readonly NoticeLook[] => {
    const first = firstAfter(outlook, date, notice.days);
    const term = look.sessions.slice(first, first + notice.term);
    if (term.length === 0) return [];
    const goingOn = term.reduce((sum, { mean }) => sum + mean * margin.valueOf() - cost, 0);
    const ending = { otherUse: notice.otherUse * term.length, exitCost: notice.exitCost };
    const question = {
      ...ending,
      sessionsHeld: held.length + older,
      intakeSeen,
      canPay,
      plateauChance,
      goingOn,
    };
    return [{ date, sessions: term.length, goingOn, ...ending, advice: keepOrClose(question) }];
  });
}

/** The days given that are not over yet; else the day of the last session, or today where nothing has a date. */
function noticeDates({ notice, held, ahead }: Outlook): readonly (Temporal.PlainDate | null)[] {
  const last = held.at(-1)?.date ?? null;
  const given = (notice?.dates ?? []).filter((date) => last === null || date.since(last).days >= 0);
  if (given.length > 0) return given;
  return [ahead[0]?.date === null ? null : (last ?? ahead[0]?.date ?? null)];
}

/** The first session ahead that a notice given that day would end; undated ones come once a week. */
function firstAfter({ ahead }: Outlook, date: Temporal.PlainDate | null, days: number): number {
  if (date === null) return Math.ceil(days / 7);
  const effective = date.add({ days });
  const found = ahead.findIndex((it) => it.date !== null && it.date.since(effective).days >= 0);
  return found < 0 ? ahead.length : found;
}

/** The next sessions as one full class: their mean demand, as uneven as chance and the luck of evenings make it. */
function fullClass(
  { capacity }: Outlook,
  { margin }: OutlookMoney,
  look: LookAhead,
  { luck }: LearnedRoll,
): FullClass {
  const next = look.sessions.slice(0, NEXT_SESSIONS);
  const mean = next.reduce((sum, { demand }) => sum + demand, 0) / next.length;
  const demand = { kind: "varied" as const, mean, dispersion: 1 + luck.mean ** 2 * mean };
  return { demand, capacity, margin: margin.valueOf() };
}

const NEXT_SESSIONS = 12;
