import { type Answer, guessesBehind, guessesSentence, guessName } from "#core/class";
import type { Problem, WorkingLine } from "#core/words";
import type { ClassSheetInput } from "./class-sheet-input.ts";

/** A sum with its heading, to be opened under the sentence that it is behind. */
export type SheetWorking = { readonly title: string; readonly lines: readonly WorkingLine[] };

/** What a ready part says, and how much of it is guessed. */
export type Said = {
  readonly kind: "ready";
  /** sentences, the answer first */
  readonly says: readonly string[];
  /** paths of the guesses that it rests on, and the sentence that says how many; "" for none */
  readonly guesses: readonly string[];
  readonly restsOn: string;
  /** what those guesses are called, each once: "how many come" */
  readonly guessNames: readonly string[];
  readonly workings: readonly SheetWorking[];
};

/** Something that is not known yet, and what she can do about it. */
export type Missing = { readonly kind: "missing"; readonly says: string; readonly next: string };

/** Something that was entered and cannot be used. */
export type Unsound = { readonly kind: "unsound"; readonly problems: readonly Problem[] };

export type SheetPart<Body = object> = (Said & Body) | Missing | Unsound;

export function said(
  input: Pick<ClassSheetInput, "document" | "practice">,
  answer: Answer,
  says: readonly string[],
  workings: readonly SheetWorking[],
): Said {
  return saidOn(input, guessesBehind(input.document, answer), says, workings);
}

/** The same for an answer that rests on guesses of its own. */
export function saidOn(
  { practice }: Pick<ClassSheetInput, "practice">,
  guesses: readonly string[],
  says: readonly string[],
  workings: readonly SheetWorking[],
): Said {
  const guessNames = [...new Set(guesses.map((path) => guessName(path, practice.locale)))];
  return { kind: "ready", says, guesses, restsOn: guessesSentence(guesses.length), guessNames, workings };
}

export function missing(says: string, next: string): Missing {
  return { kind: "missing", says, next };
}

export function unsound(problems: readonly Problem[]): Unsound {
  return { kind: "unsound", problems };
}
