import type { WeekHead } from "#core/week";
import { amountDifference } from "./amount-difference.ts";
import { listedWords } from "./listed-words.ts";
import { hoursWords, type WeekWriter } from "./week-rows.ts";

/** One figure of the week as it is and of the week on trial. */
export type ComparedWeekRow = {
  readonly label: string;
  readonly now: string;
  readonly trial: string;
  /** what the trial has more or less; "" where both are the same */
  readonly more: string;
};

export type WeekComparison = {
  /** the difference first, as a sentence */
  readonly says: string;
  /** which classes come and go */
  readonly changes: string;
  readonly rows: readonly ComparedWeekRow[];
};

/** The week on trial beside the present one; amounts a year, the rest a week. */
export function compareWeeks(now: WeekHead, trial: WeekHead, write: WeekWriter): WeekComparison {
  return {
    says: differenceSentence(now, trial, write),
    changes: changesSentence(now, trial, write),
    rows: [
      money("Earned a year after travel", now.earns, trial.earns, write),
      money("Wishes not met, at your prices", now.wishes, trial.wishes, write),
      money("Left of both", now.leaves, trial.leaves, write),
      count("Classes a week", now.load.classes, trial.load.classes),
      count("Days with a class", now.load.days, trial.load.days),
      count("Evenings", now.load.evenings, trial.load.evenings),
      hours("Door to door a week", now.load.doorToDoorMinutes, trial.load.doorToDoorMinutes),
    ],
  };
}

function differenceSentence(now: WeekHead, trial: WeekHead, { amount }: WeekWriter): string {
  const more = amountDifference(trial.earns, now.earns);
  const minutes = trial.load.doorToDoorMinutes - now.load.doorToDoorMinutes;
  const time =
    minutes === 0
      ? "in as much time"
      : `with ${hoursWords(Math.abs(minutes))} a week ${minutes > 0 ? "more" : "less"} from door to door`;
  if (Number(more) === 0) return `The week on trial earns as much, ${time}.`;
  const word = Number(more) > 0 ? "more" : "less";
  return `The week on trial earns ${amount(more.replace("-", ""))} a year ${word}, ${time}.`;
}

function changesSentence(now: WeekHead, trial: WeekHead, { name }: WeekWriter): string {
  const comes = trial.chosen.filter((id) => !now.chosen.includes(id)).map(name);
  const goes = now.chosen.filter((id) => !trial.chosen.includes(id)).map(name);
  if (comes.length === 0 && goes.length === 0) return "The same classes are in both.";
  if (comes.length === 0) return `${listedWords(goes)} would go and nothing come.`;
  if (goes.length === 0) return `${listedWords(comes)} would come and nothing go.`;
  return `${listedWords(comes)} would come and ${listedWords(goes)} go.`;
}

function money(label: string, now: string, trial: string, { amount }: WeekWriter): ComparedWeekRow {
  return {
    label,
    now: amount(now),
    trial: amount(trial),
    more: signed(amountDifference(trial, now), amount),
  };
}

function count(label: string, now: number, trial: number): ComparedWeekRow {
  return { label, now: String(now), trial: String(trial), more: signed(String(trial - now), (text) => text) };
}

function hours(label: string, now: number, trial: number): ComparedWeekRow {
  const more = trial - now;
  const text = more === 0 ? "" : `${more > 0 ? "+" : "−"}${hoursWords(Math.abs(more))}`;
  return { label, now: hoursWords(now), trial: hoursWords(trial), more: text };
}

function signed(more: string, write: (text: string) => string): string {
  const value = Number(more);
  if (value === 0) return "";
  return `${value > 0 ? "+" : "−"}${write(more.replace("-", ""))}`;
}
