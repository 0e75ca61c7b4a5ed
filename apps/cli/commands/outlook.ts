import { type OutlookJson, outlookAnswer } from "#core/outlook";
import { chanceText } from "#core/price";
import { good } from "#core/words";
import { amountWriter } from "../amount-writer.ts";
import { answerSheet, partsOf } from "../answer-sheet.ts";
import type { Command } from "../command.ts";
import { readInput } from "../read-input.ts";
import { textTable } from "../text-table.ts";

export const outlook: Command = {
  name: "outlook",
  summary: "what to expect of a class, and whether to keep, change or close it",
  words: ["OUTLOOK.json"],
  options: {},
  details: `
OUTLOOK.json has the places of a class, what you guess about newcomers and
regulars, and what has happened, as hallful schema outlook describes it; - reads
standard input. With money in it the answer has what the sessions leave; with
notice, whether to keep the class; and, if asked, about tonight, a cover or full
evenings. Every band has eight chances of ten.`,
  run: async ({ words: [name = "-"] }, world) => {
    const input = await readInput(name, world);
    if (!input.ok) return input;
    const read = outlookAnswer(input.value, amountWriter);
    if (!read.ok) return read;
    const { json, unused } = read.value;
    return good({ text: outlookText(json), json, unused });
  },
};

const headings: Readonly<Record<string, string>> = {
  roll: "The roll, as the register has it",
  together: "The sessions ahead together",
  notice: "At the next notice",
};

// More lines than this nobody reads; the JSON has them all.
const MOST_SESSIONS = 16;

function outlookText(answer: OutlookJson): string {
  const sheet = answerSheet(
    answer.sentences,
    partsOf(answer.working, (part) => headings[part] ?? part),
  );
  return `${sheet}\nThe sessions ahead, and the people on mats\n${sessionsTable(answer)}`;
}

function sessionsTable({ sessions }: OutlookJson): string {
  const every = Math.ceil(sessions.length / MOST_SESSIONS);
  const rows = sessions.flatMap((it, at) =>
    at % every === 0
      ? [
          [
            it.date ?? `session ${at + 1}`,
            it.heads.mean.toFixed(1).padStart(5),
            `${it.heads.low} to ${it.heads.high}`,
            chanceText(it.chanceFull),
            ...(it.chancePays === null ? [] : [chanceText(it.chancePays), it.contribution ?? ""]),
          ],
        ]
      : [],
  );
  const paid = sessions.some(({ chancePays }) => chancePays !== null);
  return textTable([["", "mean", "eight of ten", "full", ...(paid ? ["pays", "leaves"] : [])], ...rows]);
}
