import { bestWeek, searchWith, type WeekSearch } from "./best-week.ts";
import { countWeek } from "./check-week.ts";
import type { ChosenWeek } from "./choose-week.ts";
import { type Binding, conflict } from "./conflict.ts";

/** What one chosen class does for the week, and what the best week without it would be. */
export type ChosenLine = {
  readonly candidate: number;
  /** coins a year that would go with it while all others stay: its contribution less the travel it adds */
  readonly adds: number;
  /** minutes a week that would be free; may be nought where she would only wait instead */
  readonly minutes: number;
  readonly evening: boolean;
  readonly day: boolean;
  /** null where no week is possible without it, or none was found */
  readonly without: Change | null;
};

export type Change = {
  /** coins a year that the changed week leaves less */
  readonly loses: number;
  readonly comes: readonly number[];
  readonly goes: readonly number[];
  readonly proven: boolean;
};

/** What one rejected candidate lacks: money, or room. */
export type RejectedLine =
  | { readonly kind: "lacks"; readonly candidate: number; readonly change: Change }
  | { readonly kind: "no room"; readonly candidate: number; readonly conflict: readonly Binding[] }
  | { readonly kind: "unknown"; readonly candidate: number };

/** For each class of the week. */
export function chosenLines(search: WeekSearch, best: ChosenWeek): readonly ChosenLine[] {
  return best.chosen.map((candidate) => chosenLine(search, best, candidate));
}

/** What one class of the week does for it. A promise is let go of for the question. */
export function chosenLine(search: WeekSearch, best: ChosenWeek, candidate: number): ChosenLine {
  const { week } = search;
  const whole = countWeek(week, best.chosen);
  const rest = countWeek(
    week,
    best.chosen.filter((at) => at !== candidate),
  );
  const candidates = week.candidates.map((one, at) => (at === candidate ? { ...one, fixed: false } : one));
  const found = bestWeek(searchWith(search, { ...week, candidates }), {
    goal: "leaves",
    forbid: [candidate],
  });
  return {
    candidate,
    adds: whole.earns - rest.earns,
    minutes: whole.minutes - rest.minutes,
    evening: whole.evenings > rest.evenings,
    day: whole.days > rest.days,
    without: found.kind === "found" ? changed(best, found) : null,
  };
}

/** For each candidate left out. */
export function rejectedLines(search: WeekSearch, best: ChosenWeek): readonly RejectedLine[] {
  return notChosen(search, best).map((candidate) => rejectedLine(search, best, candidate));
}

export function notChosen({ week }: WeekSearch, { chosen }: ChosenWeek): readonly number[] {
  return week.candidates.flatMap((_, candidate) => (chosen.includes(candidate) ? [] : [candidate]));
}

/** The best week with it in, exact, and so how much more it would have to bring; or what leaves no room for it. */
export function rejectedLine(search: WeekSearch, best: ChosenWeek, candidate: number): RejectedLine {
  const found = bestWeek(search, { goal: "leaves", force: [candidate] });
  if (found.kind === "found") return { kind: "lacks", candidate, change: changed(best, found) };
  const why = found.kind === "impossible" ? conflict(search, [candidate]) : null;
  return why === null ? { kind: "unknown", candidate } : { kind: "no room", candidate, conflict: why };
}

type Found = {
  readonly chosen: readonly number[];
  readonly value: number;
  readonly bound: number;
};

function changed(best: ChosenWeek, found: Found): Change {
  return {
    loses: best.value - found.value,
    comes: found.chosen.filter((at) => !best.chosen.includes(at)),
    goes: best.chosen.filter((at) => !found.chosen.includes(at)),
    proven: found.bound === found.value && best.bound === best.value,
  };
}
