import { loadSolver, type Solver } from "#kernels/search";
import solverAddress from "highs/runtime?url";

/** The solver, fetched when it is first asked for; null where it cannot be had, and the search goes on without. */
export async function loadSearchSolver(): Promise<Solver | null> {
  try {
    return await loadSolver({ wasmAddress: solverAddress });
  } catch {
    return null;
  }
}
