import type { World } from "./world.ts";

export type ProgressLine = {
  readonly show: (text: string) => void;
  /** leaves nothing of the line behind */
  readonly clear: () => void;
};

/** One line on standard error that is written over again and again; nothing where nobody watches. */
export function progressLine({ err, watched }: Pick<World, "err" | "watched">): ProgressLine {
  let shown = 0;
  const write = (text: string): void => {
    if (watched === null) return;
    err(`\r${text.padEnd(shown)}${text === "" ? "\r" : ""}`);
    shown = text.length;
  };
  return {
    show: (text) => write(cut(text, (watched ?? 0) - 1)),
    clear: () => {
      if (shown > 0) write("");
    },
  };
}

/** What runs over the end of a terminal's line cannot be written over. */
function cut(text: string, widest: number): string {
  return text.length > widest ? `${text.slice(0, Math.max(0, widest - 1))}…` : text;
}
