import { hallSheetView } from "#app/views";
import type { Papers, Store } from "#app/ports";
import { arrangedPlan, type Arrangement } from "#core/hall";
import type { PaperSize } from "#core/papers";
import { bad, good, problem, type Result } from "#core/words";

export type PrintHallSheetAsk = {
  readonly practice: string;
  readonly hall: string;
  /** a class in that hall, whose mats and caps the sheet is for */
  readonly forClass?: string | undefined;
  readonly size?: PaperSize | undefined;
  /** as the class or the hall has it unless told */
  readonly arrangement?: Arrangement | undefined;
  /** YYYY-MM-DD, where the practice is */
  readonly today: (zone: string) => string;
};

export type PrintedPaper = {
  /** of the hall, and of the class where it is for one */
  readonly called: string;
  readonly pdf: Uint8Array;
};

/**
 * She takes the hall sheet with her as a file. It is made from what is saved. Problems: "not-found" and those of the
 * hall.
 */
export async function printHallSheet(
  store: Store,
  papers: Papers,
  ask: PrintHallSheetAsk,
): Promise<Result<PrintedPaper>> {
  const found = await store.whole(ask.practice);
  if (!found.ok) return found;
  const { practice, halls, classes } = found.value;
  const hall = halls.find((it) => it.id === ask.hall);
  const forClass = classes.find((it) => it.id === ask.forClass);
  if (hall === undefined) return bad(notFound("hall", ask.hall));
  if (ask.forClass !== undefined && forClass === undefined) return bad(notFound("class", ask.forClass));
  const view = hallSheetView({
    practice: practice.document,
    hall: hall.document,
    forClass: forClass?.document ?? null,
    today: ask.today(practice.document.zone),
    madeFrom: `version ${hall.version} of its measures`,
    ...(ask.size === undefined ? {} : { size: ask.size }),
    planOf: (sound, arrangement) => arrangedPlan(sound, ask.arrangement ?? arrangement),
  });
  if (!view.ok) return view;
  const called = [hall.document.name, forClass?.document.name ?? ""].filter((it) => it !== "").join(" ");
  return good({ called, pdf: await papers.pdf(view.value.paper) });
}

function notFound(what: "hall" | "class", id: string) {
  const says = `There is no ${what} “${id.slice(0, 60)}” here.`;
  return problem("not-found", "", says, "It may have been deleted. Look at the list again.");
}
