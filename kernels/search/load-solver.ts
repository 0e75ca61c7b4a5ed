import type { InitOptions } from "highs";
import type { Solver } from "./programme.ts";
import { solveWithHighs } from "./solve-with-highs.ts";

export type SolverFiles = {
  /** where a browser finds the solver's wasm file; Node finds it beside the package */
  readonly wasmAddress?: string;
};

/**
 * Loads the solver (about 3.5 MB of wasm) once, when first needed: in Node, in a browser's worker or in a test. The
 * solver is HiGHS through the npm package "highs"; it runs on the calling thread, so a browser ends its worker to
 * stop it. A failed load may be tried again.
 */
export function loadSolver(files: SolverFiles = {}): Promise<Solver> {
  loading ??= load(files).catch((problem: unknown) => {
    loading = null;
    throw problem;
  });
  return loading;
}

let loading: Promise<Solver> | null = null;

async function load({ wasmAddress }: SolverFiles): Promise<Solver> {
  const options: InitOptions = wasmAddress === undefined ? {} : { locateFile: () => wasmAddress };
  const { default: loadHighs } = await import("highs");
  const highs = await loadHighs(options);
  return { solve: (programme, limits = {}, start) => solveWithHighs(highs, programme, limits, start) };
}
