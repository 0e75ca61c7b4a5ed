/** What the command line touches, so that a test can stand in for the terminal. */
export type World = {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** all of standard input */
  readonly input: () => Promise<Uint8Array>;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** the folder that names of files are relative to */
  readonly folder: string;
  /** ISO 8601 instant, UTC */
  readonly now: () => string;
  /** milliseconds that only grow, to time the work */
  readonly clock: () => number;
  /** a new id for an action */
  readonly newId: () => string;
  readonly version: string;
};
