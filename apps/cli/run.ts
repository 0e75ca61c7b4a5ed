import { bad, good, type Problem, problem, problemSentence, type Result } from "#core/words";
import type { Answer, Command } from "./command.ts";
import { backup } from "./commands/backup.ts";
import { compare } from "./commands/compare.ts";
import { demand } from "./commands/demand.ts";
import { evening } from "./commands/evening.ts";
import { exportCommand } from "./commands/export.ts";
import { fit } from "./commands/fit.ts";
import { importCommand } from "./commands/import.ts";
import { moveInCommand } from "./commands/move-in.ts";
import { moveOutCommand } from "./commands/move-out.ts";
import { opening } from "./commands/opening.ts";
import { outlook } from "./commands/outlook.ts";
import { pass } from "./commands/pass.ts";
import { price } from "./commands/price.ts";
import { restore } from "./commands/restore.ts";
import { schema } from "./commands/schema.ts";
import { sheet } from "./commands/sheet.ts";
import { sessions } from "./commands/sessions.ts";
import { stillComing } from "./commands/still-coming.ts";
import { week } from "./commands/week.ts";
import { year } from "./commands/year.ts";
import { commandHelp, helpCommand, listOfCommands } from "./commands/help.ts";
import { nearest } from "./nearest.ts";
import { readWords } from "./read-words.ts";
import type { World } from "./world.ts";

export const commands: readonly Command[] = [
  fit,
  sheet,
  evening,
  pass,
  compare,
  price,
  opening,
  demand,
  outlook,
  week,
  year,
  sessions,
  stillComing,
  schema,
  exportCommand,
  importCommand,
  backup,
  restore,
  moveOutCommand,
  moveInCommand,
];

/**
 * Runs what was written; answers the exit code: 0, or 2 with what is wrong on standard error. A fault of ours
 * is told as a problem too, with exit 1.
 */
export async function run(words: readonly string[], world: World): Promise<number> {
  const json = words.includes("--json");
  const tell = (problems: readonly Problem[]) =>
    world.err(json ? `${JSON.stringify({ problems })}\n` : sentences(problems));
  try {
    const answer = await answerTo(words, world);
    if (answer.ok) return say(answer.value, json, world);
    tell(answer.problems);
    return 2;
  } catch (error) {
    tell([fault(error)]);
    return 1;
  }
}

function say(answer: Answer, json: boolean, world: World): number {
  const { text, unused = [] } = answer;
  if (unused.length > 0) world.err(json ? `${JSON.stringify({ unused })}\n` : notes(unused));
  world.out(json ? `${JSON.stringify(answer.json, null, 2)}\n` : text);
  return 0;
}

async function answerTo(words: readonly string[], world: World): Promise<Result<Answer>> {
  const [name, ...rest] = words;
  const all = [...commands, helpCommand(commands)];
  if (name === undefined || name === "--help") return good({ text: listOfCommands(all), json: namesOf(all) });
  if (name === "--version") return good({ text: `${world.version}\n`, json: { version: world.version } });
  const command = all.find((it) => it.name === name);
  if (command === undefined) return bad(commandUnknown(name, namesOf(all)));
  const given = readWords(command, rest);
  if (!given.ok) return given;
  if (given.value.flags.has("help")) return good({ text: commandHelp(command), json: command.summary });
  return command.run(given.value, world);
}

function namesOf(all: readonly Command[]): readonly string[] {
  return all.map((it) => it.name);
}

function commandUnknown(name: string, names: readonly string[]): Problem {
  const near = nearest(name, names);
  const next = near === undefined ? "See hallful help for those there are." : `Did you mean hallful ${near}?`;
  return problem("command-unknown", "", `There is no command “${name.slice(0, 60)}”.`, next);
}

function fault(error: unknown): Problem {
  const what = error instanceof Error ? error.message : String(error);
  const says = `Something went wrong in Hallful itself: ${what.replace(/\.?$/, ".")}`;
  return problem("unexpected", "", says, "Nothing was saved. Tell us what you did and what stands here.");
}

function sentences(problems: readonly Problem[]): string {
  return problems.map((it) => `${problemSentence(it)}\n`).join("");
}

function notes(unused: readonly string[]): string {
  return unused.map((place) => `Note: nothing reads “${place}”; look whether it is misspelt.\n`).join("");
}
