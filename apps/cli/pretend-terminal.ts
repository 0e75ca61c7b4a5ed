import { loadSolver } from "#kernels/search";
import { run } from "./run.ts";

type Seen = { readonly code: number; readonly out: string; readonly err: string };

type Setting = {
  readonly input?: string | Uint8Array | (() => Promise<Uint8Array>);
  readonly folder?: string;
  readonly environment?: Readonly<Record<string, string | undefined>>;
  /** milliseconds that pass between two looks at the clock; 0 unless told, so that screens repeat */
  readonly tick?: number;
  /** Ctrl-C comes at that pause, counted from 1 */
  readonly interruptAt?: number;
  readonly watched?: number;
};

/** Runs a command without a process: its time stands still and its ids are counted, so that screens repeat. */
export async function inTerminal(words: readonly string[], setting: Setting = {}): Promise<Seen> {
  const { input = "", folder = import.meta.dirname, environment = {} } = setting;
  let out = "";
  let err = "";
  let ids = 0;
  let now = 0;
  let pauses = 0;
  let heard: (() => void) | null = null;
  const code = await run(words, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    input: typeof input === "function" ? input : async () => Buffer.from(input),
    environment,
    folder,
    now: () => "2026-11-25T09:45:00.000Z",
    clock: () => (now += setting.tick ?? 0),
    watched: setting.watched ?? null,
    onInterrupt: (hear) => {
      heard = hear;
      return () => {
        heard = null;
      };
    },
    pause: async () => {
      pauses += 1;
      if (pauses === setting.interruptAt) heard?.();
    },
    solver: () => loadSolver(),
    newId: () => {
      ids += 1;
      return `action-${process.hrtime.bigint()}-${ids}`;
    },
    version: "1.2.3",
  });
  return { code, out, err };
}
