import { type CompareJson, compareAnswer } from "#core/price";
import { good } from "#core/words";
import { amountWriter } from "../amount-writer.ts";
import { answerSheet, partsOf } from "../answer-sheet.ts";
import type { Command } from "../command.ts";
import { readInput } from "../read-input.ts";
import { textTable } from "../text-table.ts";

export const compare: Command = {
  name: "compare",
  summary: "which hall leaves most for a class, a session, a year and an hour",
  words: ["HALLS.json"],
  options: {},
  details: `
HALLS.json is a class and the halls it could be in, as hallful schema compare
describes it; - reads standard input. Every hall is worked out over its own
dates, with the same people wanting to come and when it is full.`,
  run: async ({ words: [name = "-"] }, world) => {
    const input = await readInput(name, world);
    if (!input.ok) return input;
    const read = compareAnswer(input.value, amountWriter);
    if (!read.ok) return read;
    const { json, unused } = read.value;
    return good({ text: compareText(json), json, unused });
  },
};

type Hall = CompareJson["halls"][number];

function compareText(answer: CompareJson): string {
  const { sentences, currency, halls, changes, working } = answer;
  const sums = answerSheet(
    [],
    partsOf(working, (said) => said),
  );
  const told = sentences.map((it) => `${it}\n`).join("");
  const dials = changes.map(({ says }) => `  ${says}\n`).join("");
  return `${told}
What each leaves with the same people wanting to come, in ${currency}
${leavesTable(halls, "expected")}
What each leaves when it is full, in ${currency}
${leavesTable(halls, "full")}
What would change which hall comes first, the nearest first
${dials}${sums}`;
}

function leavesTable(halls: readonly Hall[], view: "expected" | "full"): string {
  const heading = ["", "places", "people", "a session", "a year", "an hour", "dates", "minutes"];
  const rows = halls.map((hall) => [
    hall.said,
    String(hall.capacity),
    String(Number(hall[view].heads.toFixed(1))),
    hall[view].perSession,
    hall[view].perYear,
    hall[view].perHour,
    String(hall.sessions),
    String(hall.doorToDoorMinutes),
  ]);
  return textTable([heading, ...rows]);
}
