import { guessesBehind } from "#core/class";
import type { ChangeJson } from "#core/price";
import { atTheClass } from "./price-question.ts";
import type { PricesAsked } from "./prices-asked.ts";
import type { PriceSheetInput } from "./price-sheet.ts";
import { type SheetPart, saidOn, unsound } from "./sheet-part.ts";

/** One figure, by how much it may be wrong, and whether it is a guess. */
export type ChangeRow = {
  readonly key: string;
  readonly says: string;
  readonly guess: boolean;
  /** "12 % away", "far away"; empty when nothing in reach changes the answer */
  readonly near: string;
};

export type ChangesPart = SheetPart<{
  readonly evening: readonly ChangeRow[];
  readonly studio: readonly ChangeRow[];
}>;

/** For each figure the value at which the answer is another, the nearest first. */
export function changesPart(input: PriceSheetInput, asked: PricesAsked): ChangesPart {
  if (asked.kind !== "ready") return asked;
  if (!asked.answer.ok) return unsound(asked.answer.problems.map(atTheClass));
  const { evening } = asked.answer.value.changes;
  const studio = asked.studio?.ok === true ? (asked.studio.value.changes.studio ?? []) : [];
  const says = [nearestSentence(evening), guessSentence([...evening, ...studio])].filter((it) => it !== "");
  return {
    ...saidOn(input, guessesBehind(input.document, "ordinary evening"), says, []),
    evening: evening.map(changeRow),
    studio: studio.map(changeRow),
  };
}

function nearestSentence(changes: readonly ChangeJson[]): string {
  const nearest = changes.find(({ at }) => at !== null);
  return nearest === undefined
    ? "No single figure, within reason, would change whether an evening pays on average."
    : `Nearest of all: ${nearest.says.charAt(0).toLowerCase()}${nearest.says.slice(1)}`;
}

/** A guess near its turning point is what she should find out first. */
function guessSentence(changes: readonly ChangeJson[]): string {
  const near = changes.find(({ guess, nearness }) => guess && nearness !== null && nearness <= 0.25);
  return near === undefined
    ? ""
    : `A guess that is worth finding out first: ${near.name}, since a change of ${percent(near.nearness ?? 0)} alters the answer.`;
}

/** A change as a row of the sheet. */
export function changeRow({ path, says, guess, nearness, at }: ChangeJson): ChangeRow {
  return {
    key: path,
    says,
    guess,
    near: at === null || nearness === null ? "" : `${percent(nearness)} away`,
  };
}

function percent(share: number): string {
  const rounded = Math.round(share * 100);
  return rounded === 0 ? "less than 1 %" : `${rounded} %`;
}
