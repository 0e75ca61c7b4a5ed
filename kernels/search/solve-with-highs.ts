import type { Highs, Model, ModelData, ModelStatusCode, VariableType } from "highs";
import { checkAnswer } from "./check-answer.ts";
import type { Answer, Basis, Limits, Outcome, Programme } from "./programme.ts";
import { mustBeProgramme } from "./must-be-programme.ts";

/**
 * Solves one programme with a fresh model, so that nothing is carried from one to the next but the basis given.
 * Throws on a programme that is none (a NaN, a column that does not exist); every outcome of solving is returned.
 */
export function solveWithHighs(highs: Highs, programme: Programme, limits: Limits, start?: Basis): Outcome {
  mustBeProgramme(programme);
  if (programme.columns.length === 0) return withoutColumns(programme);
  const model = highs.createModel(modelOf(highs, programme));
  try {
    return solved(highs, model, programme, limits, start);
  } finally {
    model.dispose();
  }
}

/** The solver calls a programme without columns "empty"; its rows sum to nothing. */
function withoutColumns({ rows }: Programme): Outcome {
  const possible = rows.every((row) => row.least <= 0 && row.most >= 0);
  return possible
    ? { kind: "best", value: 0, columns: [], prices: rows.map(() => 0), basis: null }
    : { kind: "impossible" };
}

function solved(highs: Highs, model: Model, programme: Programme, limits: Limits, start?: Basis): Outcome {
  const whole = programme.columns.some((column) => column.whole === true);
  setLimits(model, limits);
  if (start !== undefined && !whole) setStart(model, start);
  let looks = 0;
  const { modelStatus } = model.run({
    [highs.constants.callbackType.mipInterrupt](event) {
      looks++;
      if (limits.looks !== undefined && looks > limits.looks) event.interrupt();
      return undefined;
    },
  });
  return outcomeOf(model, programme, modelStatus, whole);
}

function setLimits(model: Model, { nodes, pivots, seconds }: Limits): void {
  model.options.set({ output_flag: false, random_seed: 0, mip_rel_gap: 0, mip_abs_gap: 1e-6 });
  if (nodes !== undefined) model.options.set("mip_max_nodes", nodes);
  if (seconds !== undefined) model.options.set("time_limit", seconds);
  if (pivots !== undefined) model.options.set("simplex_iteration_limit", pivots);
}

/** A start that does not suit the programme is left out: it can cost time, never the answer. */
function setStart(model: Model, { columns, rows }: Basis): void {
  const { numCols, numRows } = model.getDimensions();
  if (columns.length === numCols && rows.length === numRows)
    model.setBasis({ colStatus: columns, rowStatus: rows });
}

const OPTIMAL = 7;
const INFEASIBLE = 8;
const EITHER = 9;
const UNBOUNDED = 10;
/** bound, target, time, iterations, solutions, interrupted */
const LIMITS: readonly ModelStatusCode[] = [11, 12, 13, 14, 16, 17];

function outcomeOf(model: Model, programme: Programme, status: ModelStatusCode, whole: boolean): Outcome {
  if (status === INFEASIBLE) return { kind: "impossible" };
  if (status === UNBOUNDED) return { kind: "endless" };
  if (status === EITHER)
    return { kind: "failed", why: "impossible or endless, the solver cannot tell which" };
  if (status !== OPTIMAL && !LIMITS.includes(status)) return { kind: "failed", why: `status ${status}` };
  const { colValue, rowDual } = model.getSolution();
  const found = cleaned(programme, colValue);
  if (status !== OPTIMAL) {
    const bound = whole ? Number(model.info.get("mip_dual_bound")) : Infinity;
    return { kind: "stopped", found, bound: Number.isFinite(bound) ? bound : Infinity };
  }
  if (found === null) return { kind: "failed", why: "the answer breaks its own rows" };
  const { colStatus, rowStatus } = model.getBasis();
  return {
    kind: "best",
    ...found,
    prices: whole ? [] : [...rowDual],
    basis: whole ? null : { columns: colStatus, rows: rowStatus },
  };
}

/** Nearer a whole number than this, a value is that number: the solver's noise is about 1e-11. */
const NOISE = 1e-9;

/** The values without noise, whole ones rounded, and their sum counted again; null where they break a row. */
function cleaned(programme: Programme, values: Float64Array): Answer | null {
  const columns = programme.columns.map(({ whole }, index) => {
    const value = values[index] ?? Number.NaN;
    const near = Math.round(value) + 0;
    return whole === true || Math.abs(value - near) < NOISE ? near : value;
  });
  if (checkAnswer(programme, columns).length > 0) return null;
  const value = programme.columns.reduce((sum, { gain }, index) => sum + gain * (columns[index] ?? 0), 0);
  return { value, columns };
}

function modelOf(highs: Highs, { columns, rows }: Programme): ModelData {
  const starts = new Int32Array(rows.length + 1);
  for (const [index, row] of rows.entries()) starts[index + 1] = (starts[index] ?? 0) + row.columns.length;
  const size = starts[rows.length] ?? 0;
  const [indices, values] = [new Int32Array(size), new Float64Array(size).fill(1)];
  for (const [index, row] of rows.entries()) {
    indices.set(row.columns, starts[index]);
    if (row.values !== undefined) values.set(row.values, starts[index]);
  }
  const kinds = columns.map((column): VariableType => (column.whole === true ? 1 : 0));
  return {
    sense: highs.constants.objectiveSense.maximize,
    numCols: columns.length,
    numRows: rows.length,
    colCost: columns.map((column) => column.gain),
    colLower: columns.map((column) => column.least),
    colUpper: columns.map((column) => column.most),
    rowLower: rows.map((row) => row.least),
    rowUpper: rows.map((row) => row.most),
    matrix: { format: "csr", numRows: rows.length, numCols: columns.length, starts, indices, values },
    ...(kinds.includes(1) ? { integrality: kinds } : {}),
  };
}
