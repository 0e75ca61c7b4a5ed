import type { Column, Programme, Row } from "#kernels/search";
import type { Arc } from "./week-arcs.ts";
import type { Week } from "./week-types.ts";

/** What is asked of the weeks that keep to the limits; all by positions of candidates. */
export type WeekAsk = {
  /** "any": whether there is a week at all */
  readonly goal: "leaves" | "minutes" | "classes" | "any";
  readonly force?: readonly number[];
  readonly forbid?: readonly number[];
  /** coins a year that must be left, wishes counted */
  readonly leavesAtLeast?: number;
  /** coins a year that must be earned, travel taken off and wishes not */
  readonly earnsAtLeast?: number;
  readonly classesAtMost?: number;
  /** choices that may not come again */
  readonly not?: readonly (readonly number[])[];
};

/** Which column stands for what. */
export type WeekColumns = {
  readonly chosen: readonly number[];
  readonly arcs: readonly number[];
};

type Building = {
  readonly columns: Column[];
  readonly rows: Row[];
  /** coins a year of each column: earned, and the price of wishes */
  readonly earned: number[];
  readonly wished: number[];
};

/**
 * The week as an integer programme: a column for each candidate and each piece of a day (a network of paths from home
 * to home), for each evening, and for the run of classes in a row. All gains are whole coins or minutes.
 */
export function weekProgramme(
  week: Week,
  arcs: readonly Arc[],
  ask: WeekAsk,
): { readonly programme: Programme; readonly columns: WeekColumns } {
  const build: Building = { columns: [], rows: [], earned: [], wished: [] };
  // the paths of each day
  const chosen = week.candidates.map((one, at) => {
    const must = one.fixed || (ask.force?.includes(at) ?? false);
    const may = !(ask.forbid?.includes(at) ?? false);
    return add(build, one.contribution * one.sessions, must ? 1 : 0, may ? 1 : 0);
  });
  const arcColumns = arcs.map((arc) => add(build, -arc.cost, 0, 1));
  const columns = { chosen, arcs: arcColumns };
  for (const [at, own] of chosen.entries()) {
    row(build, 0, 0, [...picked(arcs, arcColumns, (arc) => arc.to === at), own], -1);
    row(build, 0, 0, [...picked(arcs, arcColumns, (arc) => arc.from === at), own], -1);
  }
  const starts = days.map((day) =>
    picked(arcs, arcColumns, (arc) => arc.from === null && arc.weekday === day),
  );
  for (const start of starts) row(build, 0, 1, start);
  // limits, then wishes, then what is asked
  limitRows(build, week, arcs, columns, starts, ask);
  const evenings = eveningColumns(build, week, chosen);
  wishRows(build, week, columns, starts, evenings);
  askRows(build, week, columns, ask);
  return { programme: { columns: goals(build, week, arcs, columns, ask), rows: build.rows }, columns };
}

const days = [1, 2, 3, 4, 5, 6, 7] as const;

function add(build: Building, earned: number, least: number, most: number, wished = 0): number {
  build.columns.push({ gain: 0, least, most, whole: true });
  build.earned.push(earned);
  build.wished.push(wished);
  return build.columns.length - 1;
}

/** `last` is what the last column counts; the others count one. */
function row(build: Building, least: number, most: number, columns: readonly number[], last = 1): void {
  if (columns.length === 0) return;
  const values = columns.map((_, at) => (at === columns.length - 1 ? last : 1));
  build.rows.push({ least, most, columns, values });
}

function picked(
  arcs: readonly Arc[],
  columns: readonly number[],
  keep: (arc: Arc) => boolean,
): readonly number[] {
  return arcs.flatMap((arc, at) => (keep(arc) ? [columns[at] ?? 0] : []));
}

function limitRows(
  build: Building,
  week: Week,
  arcs: readonly Arc[],
  columns: WeekColumns,
  starts: readonly (readonly number[])[],
  ask: WeekAsk,
): void {
  const { classesAWeek, classesADay, freeDays, backToBack } = week.limits;
  const most = Math.min(classesAWeek ?? Infinity, ask.classesAtMost ?? Infinity);
  if (most < Infinity) row(build, 0, most, columns.chosen);
  if (classesADay !== null)
    for (const day of days)
      row(
        build,
        0,
        classesADay,
        columns.chosen.filter((_, at) => week.candidates[at]?.weekday === day),
      );
  if (freeDays > 0) row(build, 0, 7 - freeDays, starts.flat());
  if (backToBack !== null) runRows(build, week, arcs, columns, backToBack);
  restRows(build, week, arcs, columns);
}

/** r counts the class in its run: along a piece without a break it grows by one, and it never passes the limit. */
function runRows(
  build: Building,
  week: Week,
  arcs: readonly Arc[],
  columns: WeekColumns,
  most: number,
): void {
  const runs = week.candidates.map(() => {
    build.columns.push({ gain: 0, least: 1, most });
    build.earned.push(0);
    build.wished.push(0);
    return build.columns.length - 1;
  });
  for (const [at, arc] of arcs.entries()) {
    if (!arc.tight || arc.from === null || arc.to === null) continue;
    const [own, before, after] = [columns.arcs[at] ?? 0, runs[arc.from] ?? 0, runs[arc.to] ?? 0];
    build.rows.push({
      least: 1 - most,
      most: Infinity,
      columns: [after, before, own],
      values: [1, -1, -most],
    });
  }
}

/** Who is home so late may not leave so early the next day; Sunday comes before Monday. */
function restRows(build: Building, week: Week, arcs: readonly Arc[], columns: WeekColumns): void {
  for (const [at, late] of arcs.entries()) {
    if (late.to !== null || late.homeAt === null) continue;
    const next = (late.weekday % 7) + 1;
    const home = late.homeAt - A_DAY;
    const tooEarly = picked(
      arcs,
      columns.arcs,
      (arc) =>
        arc.from === null && arc.weekday === next && (arc.homeAt ?? 0) - home < week.limits.restMinutes,
    );
    if (tooEarly.length > 0) row(build, 0, 1, [...tooEarly, columns.arcs[at] ?? 0]);
  }
}

const A_DAY = 1440;

function eveningColumns(build: Building, week: Week, chosen: readonly number[]): ReadonlyMap<number, number> {
  const evenings = new Map<number, number>();
  for (const [at, one] of week.candidates.entries()) {
    if (one.end <= week.limits.eveningFrom) continue;
    const own = evenings.get(one.weekday) ?? add(build, 0, 0, 1);
    evenings.set(one.weekday, own);
    row(build, 0, 1, [own, chosen[at] ?? 0], -1);
  }
  const { evenings: most } = week.limits;
  if (most !== null) row(build, 0, most, [...evenings.values()]);
  return evenings;
}

function wishRows(
  build: Building,
  week: Week,
  columns: WeekColumns,
  starts: readonly (readonly number[])[],
  evenings: ReadonlyMap<number, number>,
): void {
  const charge = (column: number | undefined, price: number) => {
    if (column !== undefined) build.wished[column] = (build.wished[column] ?? 0) - price;
  };
  for (const wish of week.wishes) {
    switch (wish.kind) {
      case "day-free":
        for (const start of starts[wish.weekday - 1] ?? []) charge(start, wish.price);
        break;
      case "evening-free":
        charge(evenings.get(wish.weekday), wish.price);
        break;
      case "rather-not":
        charge(columns.chosen[wish.candidate], wish.price);
        break;
      case "fewer-classes": {
        const beyond = add(build, 0, 0, week.candidates.length, 0 - wish.price);
        row(build, -Infinity, wish.than, [...columns.chosen, beyond], -1);
      }
    }
  }
}

function askRows(build: Building, week: Week, columns: WeekColumns, ask: WeekAsk): void {
  for (const choice of ask.not ?? []) {
    const taken = new Set(choice);
    // differs in one candidate at least: Σ others + Σ (1 − those of the choice) ≥ 1
    build.rows.push({
      least: 1 - choice.length,
      most: Infinity,
      columns: columns.chosen,
      values: week.candidates.map((_, at) => (taken.has(at) ? -1 : 1)),
    });
  }
  // sums are whole coins, so half a coin of room keeps the solver's noise out
  if (ask.leavesAtLeast !== undefined) build.rows.push(sumRow(ask.leavesAtLeast - 0.5, leavesOf(build)));
  if (ask.earnsAtLeast !== undefined) build.rows.push(sumRow(ask.earnsAtLeast - 0.5, build.earned));
}

function leavesOf({ earned, wished }: Building): readonly number[] {
  return earned.map((value, at) => value + (wished[at] ?? 0));
}

function sumRow(least: number, coins: readonly number[]): Row {
  const columns = coins.flatMap((value, at) => (value === 0 ? [] : [at]));
  return { least, most: Infinity, columns, values: columns.map((at) => coins[at] ?? 0) };
}

function goals(
  build: Building,
  week: Week,
  arcs: readonly Arc[],
  { chosen, arcs: arcColumns }: WeekColumns,
  { goal }: WeekAsk,
): readonly Column[] {
  const gains = goal === "leaves" ? [...leavesOf(build)] : build.columns.map(() => 0);
  if (goal === "classes") for (const column of chosen) gains[column] = -1;
  if (goal === "minutes") {
    for (const [at, column] of chosen.entries()) gains[column] = -minutesOf(week, at);
    for (const [at, column] of arcColumns.entries()) gains[column] = -(arcs[at]?.minutes ?? 0);
  }
  return build.columns.map((column, at) => ({ ...column, gain: gains[at] ?? 0 }));
}

function minutesOf({ candidates }: Week, at: number): number {
  const one = candidates[at];
  return one === undefined ? 0 : one.accessUntil - one.accessFrom + one.preparation;
}
