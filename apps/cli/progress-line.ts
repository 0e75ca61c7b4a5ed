import type { World } from "./world.ts";

export type ProgressLine = {
  readonly show: (text: string) => void;
  /** leaves nothing of the line behind */
  readonly clear: () => void;
};

/** No longer than a terminal that is narrow for once. */
const WIDEST = 150;

/** One line on standard error that is written over again and again; nothing where nobody watches. */
export function progressLine({ err, watched }: Pick<World, "err" | "watched">): ProgressLine {
  let shown = 0;
  const write = (text: string): void => {
    if (!watched) return;
    err(`\r${text.padEnd(shown)}${text === "" ? "\r" : ""}`);
    shown = text.length;
  };
  return {
    show: (text) => write(text.length > WIDEST ? `${text.slice(0, WIDEST - 1)}…` : text),
    clear: () => {
      if (shown > 0) write("");
    },
  };
}
