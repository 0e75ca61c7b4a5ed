import type { Coverage } from "./outlook-coverage.ts";
import type { Regret } from "./outlook-regret.ts";
import type { LearningSpeed, YearSpeed } from "./outlook-speed.ts";

export type OutlookRecord = {
  readonly classes: number;
  readonly year: YearSpeed;
  readonly learning: LearningSpeed;
  readonly coverage: readonly Coverage[];
  readonly regret: readonly { readonly world: string; readonly rules: readonly Regret[] }[];
};

export function outlookInWords({ year, learning, coverage, regret }: OutlookRecord): string {
  return [
    `A year's band of ${year.sessions} sessions: ${ms(year.ms)}; at one rate off by ${year.off.toFixed(1)} people at most, ` +
      `for which plain simulation takes ${year.peer.runs} years and ${ms(year.peer.ms)}.`,
    `Learning from ${learning.sessions} sessions: ${ms(learning.ms)}, ${learning.draws} draws worth ${learning.effective.toFixed(0)}; ` +
      `the prior's draws alone take ${learning.peer.draws}, worth ${learning.peer.effective.toFixed(0)}, and ${ms(learning.peer.ms)}.`,
    ...coverage.map(
      (it) =>
        `Bands of eight of ten after ${worldInWords(it)}, ${it.classes} classes: plateau ${percent(it.plateau)}, ` +
        `heads of 24 weeks ${percent(it.heads)}, single evenings ${percent(it.evenings)}, newcomers ${percent(it.newcomers)}.`,
    ),
    ...regret.flatMap(({ world, rules }) => [
      "",
      `${world.padEnd(42)}leaves  regret     ±  closed  wrongly`,
      ...rules.map(lineOf),
    ]),
  ].join("\n");
}

function worldInWords({ recorded, counted, opening, luck, reckoned }: Coverage): string {
  return [
    `${recorded} sessions${counted ? " with newcomers counted" : ""}`,
    ...(opening > 0 ? [`opened to ${opening}`] : []),
    ...(luck === null ? [] : [`luck ${luck}`]),
    ...(reckoned ? [] : ["not reckoned with"]),
  ].join(", ");
}

function lineOf(it: Regret): string {
  return [
    it.rule.padEnd(40),
    it.leaves.toFixed(0).padStart(8),
    it.regret.toFixed(0).padStart(8),
    it.standardError.toFixed(0).padStart(6),
    percent(it.closed).padStart(8),
    percent(it.closedWrongly).padStart(9),
  ].join("");
}

function ms(value: number): string {
  return `${value.toFixed(1)} ms`;
}

function percent(share: number): string {
  return `${(100 * share).toFixed(0)} %`;
}
