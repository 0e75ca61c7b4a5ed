import { owedClasses, owedWorking, readLivePasses } from "#core/price";
import { readCurrency } from "#core/words";
import type { PriceSheetInput } from "./price-sheet.ts";
import { missing, type SheetPart, saidOn, unsound } from "./sheet-part.ts";

export type OwedPart = SheetPart;

/** What is owed in classes on the passes that are out: a debt, never counted as earned. */
export function owedPart(input: PriceSheetInput): OwedPart {
  const live = input.document.planning?.live ?? [];
  if (live.length === 0) {
    return missing(
      "No pass that is out is written down, so nothing is known to be owed.",
      "Count the passes that are still good and the classes left on them.",
    );
  }
  const read = readLivePasses({ live: [...live], currency: input.practice.currency });
  const currency = readCurrency(input.practice.currency);
  if (!currency.ok) return unsound(currency.problems);
  if (!read.ok) return unsound(read.problems.map((it) => ({ ...it, place: `planning.${it.place}` })));
  const passes = read.value?.passes ?? [];
  const { classes, amount } = owedClasses(passes);
  const says = [
    `You owe ${classes === 1 ? "1 class" : `${classes} classes`}, ${input.money(amount)} in all: a debt until they are taken.`,
    `Keep that much in the bank beside what you put aside for tax. What is left on a pass when it runs out becomes yours that day, on a line of its own.`,
  ];
  const working = { title: "What is owed in classes", lines: owedWorking(passes, currency.value) };
  return saidOn(input, [], says, [working]);
}
