import type { Solver } from "#kernels/search";

/** What the command line touches, so that a test can stand in for the terminal. */
export type World = {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** columns of the terminal that standard error is, to show there how far a search is; null where it is none */
  readonly watched: number | null;
  /** all of standard input */
  readonly input: () => Promise<Uint8Array>;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** the folder that names of files are relative to */
  readonly folder: string;
  /** ISO 8601 instant, UTC */
  readonly now: () => string;
  /** milliseconds that only grow, to time the work */
  readonly clock: () => number;
  /** from now on Ctrl-C is heard once instead of ending at once; what comes back gives that up */
  readonly onInterrupt: (heard: () => void) => () => void;
  /** lets what came meanwhile be heard, between two pieces of work */
  readonly pause: () => Promise<void>;
  /** null where it cannot be loaded; searches go on without */
  readonly solver: () => Promise<Solver | null>;
  /** a new id for an action */
  readonly newId: () => string;
  readonly version: string;
};
