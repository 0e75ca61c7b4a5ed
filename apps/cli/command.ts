import type { Result } from "#core/words";
import type { World } from "./world.ts";

export type Option = {
  /** how its value is called in the help; absent for one that is there or not */
  readonly value?: string;
  readonly says: string;
};

/** What was written after the name of the command, checked against what it takes. */
export type Given = {
  readonly words: readonly string[];
  readonly values: Readonly<Record<string, string>>;
  readonly flags: ReadonlySet<string>;
};

/** What is printed: `text` for a person, `json` for a program that asked with --json. */
export type Answer = {
  readonly text: string;
  readonly json: unknown;
  /** places in a document that nothing reads, told beside the answer */
  readonly unused?: readonly string[];
};

export type Command = {
  readonly name: string;
  /** one line, for the list of commands */
  readonly summary: string;
  /** the words it needs, in their order, as they are called in the help */
  readonly words: readonly string[];
  /** the same, where the last may be left out */
  readonly optionalWords?: readonly string[];
  readonly options: Readonly<Record<string, Option>>;
  /** what the help says below the options; lines of at most 80 signs */
  readonly details: string;
  readonly run: (given: Given, world: World) => Promise<Result<Answer>>;
};

/** Every command takes these. */
export const sharedOptions: Readonly<Record<string, Option>> = {
  json: { says: "answer, or tell what is wrong, as JSON" },
  help: { says: "explain this command" },
};
