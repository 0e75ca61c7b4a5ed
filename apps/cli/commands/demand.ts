import { type DemandJson, demandAnswer } from "#core/outlook";
import { good } from "#core/words";
import { answerSheet, partsOf } from "../answer-sheet.ts";
import type { Command } from "../command.ts";
import { readInput } from "../read-input.ts";

export const demand: Command = {
  name: "demand",
  summary: "how many want to come, when full sessions hide it",
  words: ["DEMAND.json"],
  options: {},
  details: `
DEMAND.json has the places and the heads of some sessions, as hallful schema
demand describes it; - reads standard input. Who was turned away, or waited, may
be added session by session, or the sessions may have dates.`,
  run: async ({ words: [name = "-"] }, world) => {
    const input = await readInput(name, world);
    if (!input.ok) return input;
    const read = demandAnswer(input.value);
    if (!read.ok) return read;
    const { json, unused } = read.value;
    return good({ text: demandText(json), json, unused });
  },
};

function demandText({ sentences, working }: DemandJson): string {
  return answerSheet(
    sentences,
    partsOf(working, () => "What the heads stand for"),
  );
}
