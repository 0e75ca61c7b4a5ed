import {
  type EveningAnswer,
  type EveningJson,
  eveningAnswer,
  eveningJson,
  eveningSentences,
  readEvening,
} from "#core/price";
import { good } from "#core/words";
import type { Command } from "../command.ts";
import { moneyWriter } from "../money-writer.ts";
import { readInput } from "../read-input.ts";
import { columnWidths, workingColumns } from "../working-columns.ts";

export const evening: Command = {
  name: "evening",
  summary: "what an evening costs, who pays for the room and what it leaves",
  words: ["EVENING.json"],
  options: {},
  details: `
EVENING.json is an evening as hallful schema evening describes it, with money as
decimal strings; - reads standard input. A break-even of null in the JSON is
never: no number of people pays for the room.`,
  run: async ({ words: [name = "-"] }, world) => {
    const input = await readInput(name, world);
    if (!input.ok) return input;
    const read = readEvening(input.value);
    if (!read.ok) return read;
    const answer = eveningAnswer(read.value.evening);
    return good({ text: eveningText(answer), json: eveningJson(answer), unused: read.value.unused });
  },
};

const headings = {
  hire: "What the hall charges",
  cost: "What the evening costs",
  yield: "What one person brings",
  breakEven: "Who pays for the room",
  hourly: "What your time earns",
} as const;

/** The answer first, then the sums behind it, then what more or fewer people would change. */
function eveningText(answer: EveningAnswer): string {
  const locale = answer.currency === "USD" ? "en-US" : "en-GB";
  const sentences = eveningSentences(answer, locale, moneyWriter(answer.currency, locale));
  const parts = Object.entries(headings).map(([part, heading]) => {
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the keys of headings are those of working
    const lines = answer.working[part as keyof typeof headings];
    return lines.length === 0 ? "" : `\n${heading}\n${workingColumns(lines, columnWidths(all(answer)))}`;
  });
  const told = sentences.map((it) => `${it}\n`).join("");
  return `${told}${parts.join("")}\nHeads, takings and what is left, in ${answer.currency}\n${headsTable(answer)}`;
}

function all(answer: EveningAnswer) {
  return Object.values(answer.working).flat();
}

function headsTable(answer: EveningAnswer): string {
  const { table }: Pick<EveningJson, "table"> = eveningJson(answer);
  const width = (of: (line: EveningJson["table"][number]) => string) =>
    Math.max(...table.map((line) => of(line).length));
  const heads = width((it) => String(it.heads));
  const takings = width((it) => it.takings);
  const contribution = width((it) => it.contribution);
  return table
    .map((it) => {
      const left = it.contribution.padStart(contribution);
      return `  ${String(it.heads).padStart(heads)}  ${it.takings.padStart(takings)}  ${left}\n`;
    })
    .join("");
}
