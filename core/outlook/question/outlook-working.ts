import { chanceText, coinText, type PartLine, partLines, plainDecimal } from "#core/price";
import type { WorkingLine } from "#core/words";
import type { LearnedRate } from "../learning/learned-roll.ts";
import { shortDecimal } from "../opening/opening-words.ts";
import type { OutlookFound } from "./outlook-found.ts";
import { exactAmount } from "./outlook-json.ts";
import type { Outlook } from "./outlook-question.ts";

/** The plateau from its rates, the money of all sessions, and the choice at the next notice. */
export function outlookWorking(outlook: Outlook, found: OutlookFound): readonly PartLine[] {
  return [
    ...partLines("roll", rollLines(outlook, found)),
    ...partLines("together", togetherLines(outlook, found)),
    ...partLines("notice", noticeLines(outlook, found)),
  ];
}

function rollLines({ roll }: Outlook, { learned }: OutlookFound): readonly WorkingLine[] {
  const { luck, echo } = learned;
  const { newcomers, stays, attends, leaves } = learned.rates;
  const { guess } = roll;
  return [
    rateLine("Newcomers of an ordinary week", guess.newcomers, newcomers, 2),
    rateLine("Of them stay", guess.stays, stays, 2),
    rateLine("A regular comes to", guess.attends, attends, 2),
    rateLine("Regulars who stop each week", guess.leaves, leaves, 3),
    ...(guess.luck === null ? [] : [rateLine("Luck that an evening shares", guess.luck, luck, 2)]),
    ...(guess.echo === null ? [] : [rateLine("Brought by each at the opening", guess.echo, echo, 2)]),
    {
      label: "After 80 sessions want to come",
      sum: "newcomers × (1 + stay × come × weeks they stay), over all draws",
      amount: shortDecimal(learned.plateau.mean),
      total: true,
    },
  ];
}

function rateLine(label: string, guess: number, rate: LearnedRate, decimals: number): WorkingLine {
  const plain = (value: number): string => plainDecimal(value, decimals);
  return {
    label,
    sum: `guessed ${plain(guess)}, eight of ten ${plain(rate.low)} to ${plain(rate.high)}`,
    amount: plain(rate.mean),
  };
}

function togetherLines(
  { money, ahead }: Outlook,
  { heads, money: year }: OutlookFound,
): readonly WorkingLine[] {
  if (money === null || year === null) return [];
  const coins = (minor: number): string => coinText(exactAmount(minor), money.currency);
  const each = coins(money.margin.valueOf());
  return [
    {
      label: "People leave",
      sum: `${shortDecimal(heads.mean)} × ${each}`,
      amount: coins(heads.mean * money.margin.valueOf()),
    },
    {
      label: "Sessions cost",
      sum: `${ahead.length} × ${coins(money.cost)}`,
      amount: coins(0 - money.cost * ahead.length),
    },
    { label: "Together", sum: "", amount: coins(year.contribution.mean), total: true },
  ];
}

function noticeLines({ money }: Outlook, { notices, plateauChance }: OutlookFound): readonly WorkingLine[] {
  const [first] = notices;
  if (money === null || first === undefined) return [];
  const coins = (minor: number): string => coinText(exactAmount(minor), money.currency);
  return [
    {
      label: "Going on",
      sum: `${first.sessions} sessions after the notice`,
      amount: coins(first.goingOn),
    },
    {
      label: "Ending it",
      sum: `other use ${coins(first.otherUse)}, less ${coins(first.exitCost)} for ending`,
      amount: coins(first.otherUse - first.exitCost),
    },
    {
      label: "Comes to what it needs",
      sum: "share of all draws that do after 80 sessions",
      amount: chanceText(plateauChance ?? 0),
    },
  ];
}
