import { coinText, type PartLine } from "#core/price";
import { exactNumber } from "#core/words";
import type { Band } from "../ahead/total-band.ts";
import type { KeepAdvice } from "../decide/keep-or-close.ts";
import type { Remedy } from "../decide/second-class.ts";
import type { Choice } from "../decide/tonight.ts";
import type { LearnedRate } from "../learning/learned-roll.ts";
import type { RollRates } from "../roll/roll-rates.ts";
import type { OutlookFound } from "./outlook-found.ts";
import type { Outlook, OutlookMoney } from "./outlook-question.ts";

type BandText = { readonly mean: string; readonly low: string; readonly high: string };

export type SessionJson = {
  readonly date: string | null;
  readonly season: number;
  readonly heads: Band;
  readonly demand: number;
  readonly chanceFull: number;
  /** that it brings what it costs; null without money */
  readonly chancePays: number | null;
  readonly contribution: string | null;
};

/** The answer for other programs; chances lie between 0 and 1, eight of ten between low and high. */
export type OutlookJson = {
  readonly format: "hallful/outlook-answer@1";
  readonly sentences: readonly string[];
  readonly sessionsHeld: number;
  /** who came to the first session because the class was new; null where it was not */
  readonly opening: number | null;
  /** people expected to the first session ahead, where that is the opening; null where it is not */
  readonly opensTo: number | null;
  readonly rates: Readonly<Record<keyof RollRates, LearnedRate>>;
  /** the spread of a luck about 1 that all people of one evening share */
  readonly luck: LearnedRate;
  readonly plateau: LearnedRate;
  readonly breakEven: number | null;
  /** the heads that also pay for the best other use of the slot */
  readonly worthWhile: number | null;
  readonly plateauChance: number | null;
  readonly sessions: readonly SessionJson[];
  readonly together: {
    readonly sessions: number;
    readonly heads: Band;
    readonly takings: BandText | null;
    readonly contribution: BandText | null;
    readonly chanceOfLoss: number | null;
  };
  readonly advice: KeepAdvice["kind"] | null;
  readonly firm: boolean;
  readonly notices: readonly {
    readonly date: string | null;
    readonly sessions: number;
    readonly goingOn: string;
    readonly ending: string;
    readonly advice: KeepAdvice["kind"];
  }[];
  readonly remedies: readonly { readonly kind: Remedy["kind"]; readonly gainPerSession: string }[];
  readonly tonight: ChoiceJson | null;
  readonly cover: ChoiceJson | null;
  readonly learning: {
    readonly seed: number;
    readonly draws: number;
    readonly effective: number;
    readonly rounds: number;
  };
  readonly currency: string | null;
  readonly working: readonly PartLine[];
};

export type ChoiceJson = {
  readonly does: string;
  readonly cancels: string;
  readonly better: "go ahead" | "cancel";
};

export function outlookJson(
  outlook: Outlook,
  found: OutlookFound,
  told: { readonly sentences: readonly string[]; readonly working: readonly PartLine[] },
): OutlookJson {
  const { learned, money } = found;
  const coins = coinsIn(outlook.money);
  const [first] = found.notices;
  return {
    format: "hallful/outlook-answer@1",
    sentences: told.sentences,
    sessionsHeld: outlook.held.length + outlook.older,
    opening: outlook.roll.record.opening,
    opensTo: outlook.roll.opensTo ?? null,
    rates: learned.rates,
    luck: learned.luck,
    plateau: learned.plateau,
    breakEven: found.breakEven,
    worthWhile: found.worthWhile,
    plateauChance: found.plateauChance,
    sessions: sessionsJson(outlook, found),
    together: {
      sessions: outlook.ahead.length,
      heads: found.heads,
      takings: money === null ? null : bandText(money.takings, coins),
      contribution: money === null ? null : bandText(money.contribution, coins),
      chanceOfLoss: money?.chanceOfLoss ?? null,
    },
    advice: first?.advice.kind ?? null,
    firm: first?.advice.firm ?? false,
    notices: found.notices.map((it) => ({
      date: it.date?.toString() ?? null,
      sessions: it.sessions,
      goingOn: coins(it.goingOn),
      ending: coins(it.otherUse - it.exitCost),
      advice: it.advice.kind,
    })),
    remedies: found.remedies.map(({ kind, gain }) => ({ kind, gainPerSession: coins(gain) })),
    tonight: choiceJson(found.tonight, coins),
    cover: choiceJson(found.cover, coins),
    learning: {
      seed: outlook.seed,
      draws: learned.draws,
      effective: learned.effective,
      rounds: learned.rounds,
    },
    currency: outlook.money?.currency ?? null,
    working: told.working,
  };
}

type Coins = (minor: number) => string;

function coinsIn(money: OutlookMoney | null): Coins {
  return (amount) => (money === null ? "" : coinText(exactAmount(amount), money.currency));
}

/** An estimate in minor units as an exact one; what lies behind its fourth decimal is known to nobody. */
export function exactAmount(amount: number): ReturnType<typeof exactNumber> {
  return exactNumber(Number(amount.toFixed(4)));
}

function sessionsJson({ ahead, money }: Outlook, found: OutlookFound): readonly SessionJson[] {
  const coins = coinsIn(money);
  return found.look.sessions.map((it, at) => ({
    date: ahead[at]?.date?.toString() ?? null,
    season: ahead[at]?.season ?? 1,
    heads: { mean: it.mean, low: it.low, high: it.high },
    demand: it.demand,
    chanceFull: it.chanceFull,
    chancePays: money === null ? null : chancePays(it.chances, found.breakEven),
    contribution: money === null ? null : coins(it.mean * money.margin.valueOf() - money.cost),
  }));
}

function chancePays(chances: Float64Array, breakEven: number | null): number {
  if (breakEven === null) return 0;
  return Math.min(
    1,
    chances.slice(breakEven).reduce((sum, chance) => sum + chance, 0),
  );
}

function bandText({ mean, low, high }: Band, coins: Coins): BandText {
  return { mean: coins(mean), low: coins(low), high: coins(high) };
}

function choiceJson(choice: Choice | null, coins: Coins): ChoiceJson | null {
  if (choice === null) return null;
  const { does, cancels } = choice;
  return { does: coins(does), cancels: coins(cancels), better: does >= cancels ? "go ahead" : "cancel" };
}
