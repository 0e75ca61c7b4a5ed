import { parseArgs } from "node:util";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import { type Command, type Given, type Option, sharedOptions } from "./command.ts";
import { nearest } from "./nearest.ts";

/**
 * The words after a command's name, against what it takes.
 * Problems: "option-unknown", "option-value-missing", "option-value-extra", "word-missing", "word-extra".
 */
export function readWords(command: Command, words: readonly string[]): Result<Given> {
  const options = { ...sharedOptions, ...command.options };
  const { tokens } = parseArgs({
    args: [...words],
    options: Object.fromEntries(Object.entries(options).map(([name, it]) => [name, { type: kindOf(it) }])),
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const given = tokens.flatMap((it) => (it.kind === "option" ? [it] : []));
  const positional = tokens.flatMap((it) => (it.kind === "positional" ? [it.value] : []));
  const flags = new Set(given.filter((it) => it.value === undefined).map((it) => it.name));
  const problems = [
    ...given.flatMap((it) => optionProblem(command, options, it)),
    ...(flags.has("help") ? [] : wordProblems(command, positional)),
  ];
  if (problems.length > 0) return bad(...problems);
  const values = given.flatMap((it) => (it.value === undefined ? [] : [[it.name, it.value] as const]));
  return good({ words: positional, values: Object.fromEntries(values), flags });
}

type GivenOption = { readonly name: string; readonly rawName: string; readonly value: string | undefined };

function kindOf(option: Option): "string" | "boolean" {
  return option.value === undefined ? "boolean" : "string";
}

function optionProblem(
  command: Command,
  options: Readonly<Record<string, Option>>,
  given: GivenOption,
): readonly Problem[] {
  const { name, rawName, value } = given;
  const option = Object.hasOwn(options, name) ? options[name] : undefined;
  if (option === undefined) return [optionUnknown(command, options, rawName, name)];
  if (option.value !== undefined && value === undefined) {
    const next = `Write it like ${rawName} ${option.value}.`;
    return [problem("option-value-missing", rawName, `${rawName} needs a value.`, next)];
  }
  if (option.value === undefined && value !== undefined) {
    return [problem("option-value-extra", rawName, `${rawName} takes no value.`, `Write ${rawName} alone.`)];
  }
  return [];
}

function optionUnknown(
  command: Command,
  options: Readonly<Record<string, Option>>,
  rawName: string,
  name: string,
): Problem {
  const near = nearest(name, Object.keys(options));
  const next =
    near === undefined ? `See hallful help ${command.name} for those there are.` : `Did you mean --${near}?`;
  return problem("option-unknown", rawName, `hallful ${command.name} has no option ${rawName}.`, next);
}

function wordProblems(command: Command, words: readonly string[]): readonly Problem[] {
  const most = command.words.length + (command.optionalWords?.length ?? 0);
  const missing = command.words[words.length];
  const next = `Write it like ${useOf(command)}`;
  if (missing !== undefined) {
    return [problem("word-missing", missing, `hallful ${command.name} needs ${missing}.`, next)];
  }
  const extra = words[most];
  if (extra === undefined) return [];
  return [
    problem(
      "word-extra",
      extra.slice(0, 60),
      `hallful ${command.name} has no use for “${extra.slice(0, 60)}”.`,
      next,
    ),
  ];
}

/** "hallful fit HALL.json" */
export function useOf(command: Command): string {
  const optional = (command.optionalWords ?? []).map((word) => `[${word}]`);
  return ["hallful", command.name, ...command.words, ...optional].join(" ");
}
