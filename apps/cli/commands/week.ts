import { type WeekJson, weekAnswer } from "#core/week";
import { bad, good, problem } from "#core/words";
import { amountWriter } from "../amount-writer.ts";
import { answerSheet, partsOf } from "../answer-sheet.ts";
import type { Command } from "../command.ts";
import { readInput } from "../read-input.ts";
import { textTable } from "../text-table.ts";

export const week: Command = {
  name: "week",
  summary: "the best week within your limits, proven, and what each class does for it",
  words: ["WEEK.json"],
  options: {},
  details: `
WEEK.json has the places with the minutes and kilometres between them, all that
could be taught, your limits and your wishes with their prices, as hallful
schema week describes it; - reads standard input. Give a target, what the year
should earn, for the lightest week that does.`,
  run: async ({ words: [name = "-"] }, world) => {
    const input = await readInput(name, world);
    if (!input.ok) return input;
    const solver = await world.solver();
    if (solver === null) return bad(noSolver());
    const read = weekAnswer(input.value, solver, amountWriter);
    if (!read.ok) return read;
    const { json, unused } = read.value;
    return good({ text: weekText(json), json, unused });
  },
};

function noSolver() {
  const says = "The solver that finds the best week cannot be loaded.";
  return problem("solver-missing", "", says, "Install Hallful anew with npm install.");
}

const headings: Readonly<Record<string, string>> = {
  classes: "What the classes bring a year",
  travel: "The ways",
  left: "What is left",
};

function weekText(answer: WeekJson): string {
  const sheet = answerSheet(
    answer.sentences,
    partsOf(answer.working, (part) => headings[part] ?? part),
  );
  const { currency, curve } = answer;
  return `${sheet}
What each class adds, and what is lost a year when it goes, in ${currency}
${chosenTable(answer)}
What the others would have to bring more each session, in ${currency}
${rejectedTable(answer)}
The most that is left a year, in ${currency}
${curveTable("classes a week", curve.classes)}
${curveTable("evenings a week", curve.evenings)}`;
}

function chosenTable({ chosen }: WeekJson): string {
  const heading = ["", "adds a year", "min a week", "an hour", "lost without it", "would free"];
  const rows = chosen.map((it) => [
    it.name,
    it.adds,
    String(it.minutesAWeek),
    it.perHour ?? "-",
    it.without?.leavesLess ?? "not possible",
    freed(it),
  ]);
  return textTable([heading, ...rows]);
}

function freed({ frees }: WeekJson["chosen"][number]): string {
  return [...(frees.evening ? ["an evening"] : []), ...(frees.day ? ["a day"] : [])].join(", ");
}

function rejectedTable({ rejected, chosen }: WeekJson): string {
  const names = new Map(chosen.map(({ id, name }) => [id, name]));
  if (rejected.length === 0) return "  All that could be taught is in the week.\n";
  return rejected.map((it) => `  ${it.name}: ${lackWords(it, names)}\n`).join("");
}

function lackWords(
  { lacksPerSession, withIt, noRoomFor }: WeekJson["rejected"][number],
  names: ReadonlyMap<string, string>,
): string {
  if (lacksPerSession === null)
    return noRoomFor.length === 0 ? "not found out in time" : `no room beside ${noRoomFor.join("; ")}`;
  const goes = withIt?.goes.map((id) => names.get(id) ?? id) ?? [];
  return goes.length === 0 ? lacksPerSession : `${lacksPerSession}, in place of ${goes.join(", ")}`;
}

function curveTable(what: string, points: WeekJson["curve"]["classes"]): string {
  return textTable([
    [what, "leaves"],
    ...points.map(({ count, leaves, proven }) => [String(count), `${leaves}${proven ? "" : " or more"}`]),
  ]);
}
