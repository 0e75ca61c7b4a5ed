import type { Exit } from "./exits-of.ts";
import type { ExitRule } from "./published-figures.ts";

/**
 * How many people the exits are for by a rule, all of them open and with the widest out of use, as fire may put it;
 * null where there is only one. Whole people, rounded down.
 *
 * Counted one by one, three exits of 0.85 m are for 3 × 110 = 330 people and not for what one of 2.55 m would take
 * (Approved Document B explains it so, from memory).
 */
export function peopleThrough(
  exits: readonly Exit[],
  rule: ExitRule,
): { readonly all: number; readonly withoutWidest: number | null } {
  const widths = exits.map((it) => it.width).sort((a, b) => b - a);
  const [, ...others] = widths;
  return {
    all: widths.length === 1 ? throughOne(widths, rule) : through(widths, rule),
    withoutWidest: others.length === 0 ? null : through(others, rule),
  };
}

function throughOne(widths: readonly number[], rule: ExitRule): number {
  const people = through(widths, rule);
  return rule.kind === "each exit" ? Math.min(rule.mostWithOneExit, people) : people;
}

function through(widths: readonly number[], rule: ExitRule): number {
  switch (rule.kind) {
    case "total width":
      return Math.floor(sum(widths) / rule.millimetresPerPerson + 1e-9);
    case "each exit":
      return sum(widths.map((width) => throughStep(width, rule)));
  }
}

function throughStep(width: number, rule: Extract<ExitRule, { kind: "each exit" }>): number {
  const step = rule.steps.findLast((it) => width >= it.width);
  if (step === undefined) return 0;
  const last = step === rule.steps.at(-1);
  return last ? Math.max(step.people, Math.floor(width / rule.millimetresPerPersonBeyond)) : step.people;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, it) => total + it, 0);
}
