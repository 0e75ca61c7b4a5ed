import { chanceText, type PassJson, passAnswer } from "#core/price";
import { good } from "#core/words";
import { amountWriter } from "../amount-writer.ts";
import { answerSheet, partsOf } from "../answer-sheet.ts";
import type { Command } from "../command.ts";
import { readInput } from "../read-input.ts";
import { textTable } from "../text-table.ts";

export const pass: Command = {
  name: "pass",
  summary: "for how long a pass should run, and who would lose classes",
  words: ["PASS.json"],
  options: {},
  details: `
PASS.json is a pass as hallful schema pass describes it: how many classes it
holds, the share of the sessions that its holders come to and, if you like, the
share of them who should use it up; - reads standard input. A calendar in it
gives the use-by as a date. In the JSON shares lie between 0 and 1.`,
  run: async ({ words: [name = "-"] }, world) => {
    const input = await readInput(name, world);
    if (!input.ok) return input;
    const read = passAnswer(input.value, amountWriter);
    if (!read.ok) return read;
    const { json, unused } = read.value;
    return good({ text: passText(json), json, unused });
  },
};

function passText(answer: PassJson): string {
  const sheet = answerSheet(
    answer.sentences,
    partsOf(answer.working, (part) =>
      part === "owed" ? "What is owed on the passes that are out" : "How many weeks are enough",
    ),
  );
  return `${sheet}${lostDates(answer)}\nTeaching weeks, and the holders who would lose classes\n${weeksTable(answer)}`;
}

function lostDates({ useBy }: PassJson): string {
  if (useBy === null || useBy.lost.length === 0) return "";
  return `\nClosed dates before the use-by\n${textTable(useBy.lost.map(({ date, why }) => [`${date}  ${why}`]))}`;
}

function weeksTable({ table }: PassJson): string {
  return textTable(
    table.map((it) => [String(it.teachingWeeks).padStart(3), chanceText(it.shareLosingClasses)]),
  );
}
