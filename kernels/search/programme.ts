/**
 * A linear programme: the greatest sum of gains over columns within their bounds and rows within theirs.
 * Infinity and -Infinity stand for no bound. A column that is `whole` takes whole numbers only.
 */
export type Programme = {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
};

export type Column = {
  readonly gain: number;
  readonly least: number;
  readonly most: number;
  readonly whole?: boolean;
};

/** least ≤ Σ values[k] · columns[k] ≤ most; without values each is 1. A column stands in a row once. */
export type Row = {
  readonly least: number;
  readonly most: number;
  readonly columns: readonly number[];
  readonly values?: readonly number[];
};

export type Limits = {
  /** nodes of the search for whole numbers; none by default */
  readonly nodes?: number;
  /** pivots of one linear programme; none by default */
  readonly pivots?: number;
  /** how often the search for whole numbers may ask whether to go on; none by default */
  readonly looks?: number;
  /** for measuring only: with it the answer depends on the machine */
  readonly seconds?: number;
};

/** Which columns and rows rest at a bound: lets the next, similar programme start where this one ended. */
export type Basis = { readonly columns: Int32Array; readonly rows: Int32Array };

export type Answer = { readonly value: number; readonly columns: readonly number[] };

/**
 * "best": nothing is better, to the solver's tolerance of about 1e-7; `prices` tells per row what one more unit of its
 * limit is worth (empty for whole numbers), `basis` is null for whole numbers. "stopped": a limit was met;
 * `bound` is the solver's own. "failed": the solver gave up or contradicted itself; says why.
 */
export type Outcome =
  | ({ readonly kind: "best"; readonly prices: readonly number[]; readonly basis: Basis | null } & Answer)
  | { readonly kind: "impossible" }
  | { readonly kind: "endless" }
  | { readonly kind: "stopped"; readonly found: Answer | null; readonly bound: number }
  | { readonly kind: "failed"; readonly why: string };

/** Something that solves programmes: pure, the same answer every time. Load it with loadSolver. */
export type Solver = {
  readonly solve: (programme: Programme, limits?: Limits, start?: Basis) => Outcome;
};
