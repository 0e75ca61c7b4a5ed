import { type OpeningJson, openingAnswer } from "#core/outlook";
import { chanceText } from "#core/price";
import { good } from "#core/words";
import { amountWriter } from "../amount-writer.ts";
import { answerSheet, partsOf } from "../answer-sheet.ts";
import type { Command } from "../command.ts";
import { readInput } from "../read-input.ts";
import { textTable } from "../text-table.ts";

export const opening: Command = {
  name: "opening",
  summary: "how many to accept for a free first class, and what to expect of it",
  words: ["OPENING.json"],
  options: {},
  details: `
OPENING.json has the mats and the share of those accepted who come, as hallful
schema opening describes it; - reads standard input. Say in it whether several
come in pairs, what the hall posts, and later what really happened. In the JSON
chances and shares lie between 0 and 1.`,
  run: async ({ words: [name = "-"] }, world) => {
    const input = await readInput(name, world);
    if (!input.ok) return input;
    const read = openingAnswer(input.value, amountWriter);
    if (!read.ok) return read;
    const { json, unused } = read.value;
    return good({ text: openingText(json), json, unused });
  },
};

const headings: Readonly<Record<string, string>> = {
  accept: "How many are still within the risk",
  stayer: "What one person who stays comes to",
};

function openingText(answer: OpeningJson): string {
  const sheet = answerSheet(
    answer.sentences,
    partsOf(answer.working, (part) => headings[part] ?? part),
  );
  return `${sheet}\nAccepted, and what to expect of it\n${nightTable(answer)}`;
}

function nightTable({ table, room }: OpeningJson): string {
  const rows = table.map((it) => [
    String(it.accepted).padStart(3),
    it.expected.toFixed(1).padStart(4),
    chanceText(it.chanceOver),
    it.turnedAway.toFixed(2),
    it.emptyMats.toFixed(2),
  ]);
  return textTable([["", "come", `more than ${room}`, "sent home", "empty mats"], ...rows]);
}
