import { bad, good, problem } from "#core/words";
import { type Command, type Option, sharedOptions } from "../command.ts";
import { nearest } from "../nearest.ts";
import { useOf } from "../read-words.ts";

export function helpCommand(commands: readonly Command[]): Command {
  const help: Command = {
    name: "help",
    summary: "explain a command, or list them all",
    words: [],
    optionalWords: ["COMMAND"],
    options: {},
    details: "",
    run: async ({ words }) => {
      const [name] = words;
      const all = [...commands, help];
      if (name === undefined) return good({ text: listOfCommands(all), json: all.map((it) => it.name) });
      const command = all.find((it) => it.name === name);
      if (command === undefined) return bad(unknown(name, all));
      return good({ text: commandHelp(command), json: { name, summary: command.summary } });
    },
  };
  return help;
}

export function listOfCommands(commands: readonly Command[]): string {
  const lines = commands.map((it) => [useOf(it), it.summary] as const);
  return `Hallful works out what a hall holds, what an evening costs and what a year leaves.

${table([...lines, ["hallful --version", "the version of Hallful"]])}
hallful help COMMAND explains one. The screens are started with npm start.
`;
}

export function commandHelp(command: Command): string {
  const options = Object.entries({ ...command.options, ...sharedOptions });
  const lines = options.map(([name, it]) => [optionUse(name, it), it.says] as const);
  const details = command.details === "" ? "" : `\n${command.details.trim()}\n`;
  return `${useOf(command)}\n${sentence(command.summary)}\n\n${table(lines)}${details}`;
}

function optionUse(name: string, option: Option): string {
  return option.value === undefined ? `--${name}` : `--${name} ${option.value}`;
}

function sentence(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`;
}

function table(lines: readonly (readonly [string, string])[]): string {
  const width = Math.max(...lines.map(([left]) => left.length));
  return lines.map(([left, right]) => `  ${left.padEnd(width)}  ${right}\n`).join("");
}

function unknown(name: string, all: readonly Command[]) {
  const near = nearest(
    name,
    all.map((it) => it.name),
  );
  const next =
    near === undefined ? "See hallful help for those there are." : `Did you mean hallful help ${near}?`;
  return problem("command-unknown", "COMMAND", `There is no command “${name.slice(0, 60)}”.`, next);
}
