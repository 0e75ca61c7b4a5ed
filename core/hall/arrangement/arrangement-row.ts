import { formatLength, type LengthUnits, type Result } from "#core/words";
import type { Hall } from "../hall.ts";
import { type Sight, whoCannotSee } from "../sight/who-cannot-see.ts";
import { type ClearWay, clearWay } from "../way/clear-way.ts";
import type { ArrangedMatPlan, Arrangement } from "./arrangement-types.ts";
import { type LeastBetween, leastBetween } from "./least-between.ts";
import { matsSaid } from "./most-progress.ts";
import { arrangementWords, proofSentence } from "./proof-sentence.ts";
import { sightOptions } from "./sight-options.ts";

/** One arrangement beside the others: everything by which to judge it. */
export type ArrangementRow = {
  readonly arrangement: Arrangement;
  readonly plan: ArrangedMatPlan;
  readonly count: number;
  readonly bound: number;
  readonly proven: boolean;
  /** null where no place for the teacher is known */
  readonly sight: Sight | null;
  readonly between: LeastBetween;
  /** whether each mat has a way to a door; problems where no door is drawn */
  readonly way: Result<ClearWay>;
  /** how many, how surely, who sees, how near, and the way out: a sentence each */
  readonly sentences: readonly string[];
};

/** 0.90 m: a way that most codes ask for in small rooms; the hall's own plan of its exits decides. From memory. */
export const USUAL_WAY = 900;

/** A plan with what can be said of it. `wayWidth` in millimetres; one that is none comes back as the row's problem. */
export function arrangementRow(
  hall: Hall,
  plan: ArrangedMatPlan,
  wayWidth = USUAL_WAY,
  units: LengthUnits = "metric",
): ArrangementRow {
  const { arrangement, count, bound, proven } = plan;
  const sight = whoCannotSee(hall, plan, sightOptions(plan));
  const between = leastBetween(hall, plan.mats);
  const way = clearWay(hall, plan, wayWidth, units);
  const sentences = [
    `${matsSaid(count)} ${arrangementWords[arrangement]}. ${proofSentence(plan)}`,
    sightSentence(sight),
    betweenSentence(between, units),
    way.ok ? (way.value.sentences[0] ?? "") : way.problems.map((it) => it.says).join(" "),
  ];
  return { arrangement, plan, count, bound, proven, sight, between, way, sentences };
}

function sightSentence(sight: Sight | null): string {
  return sight?.sentences[0] ?? "No place is drawn for the teacher, so nothing is said of who sees her.";
}

function betweenSentence({ side, end, any }: LeastBetween, units: LengthUnits): string {
  if (any === null) return "There are no two mats to lie beside one another.";
  const said = (figure: number): string => formatLength(figure, units);
  const parts = [
    ...(side === null ? [] : [`${said(side)} between long sides`]),
    ...(end === null ? [] : [`${said(end)} between head and foot`]),
  ];
  const nearest = `the nearest two mats are ${said(any)} apart`;
  return parts.length === 0 ? `${capital(nearest)}.` : `At least ${parts.join(" and ")}; ${nearest}.`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
