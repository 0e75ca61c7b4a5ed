import { advanceMostMats, type Hall, type MostMatPlan, mostMatPlan, startMostMats } from "#core/hall";
import { progressLine } from "./progress-line.ts";
import type { World } from "./world.ts";

/** Why a search came to its end; "tried": nothing more along the directions that were tried, though not over all. */
export type Ended = "proven" | "tried" | "time" | "interrupted";

export type MostSearched = { readonly plan: MostMatPlan; readonly ended: Ended };

/** Signals are let in and progress is told after so many milliseconds of work. */
const PORTION = 100;

/**
 * Searches for the most until it is proven, the seconds are over or Ctrl-C is pressed; the best plan so far stands
 * whichever it is. Progress goes to standard error where somebody watches it.
 */
export async function searchMost(hall: Hall, seconds: number, world: World): Promise<MostSearched> {
  const stop = new AbortController();
  const giveUp = world.onInterrupt(() => stop.abort());
  const line = progressLine(world);
  const began = world.clock();
  const passed = (): number => (world.clock() - began) / 1000;
  try {
    const solver = await world.solver();
    let run = startMostMats(hall, solver === null ? {} : { solver });
    for (
      let now = passed();
      !run.progress.finished && now < seconds && !stop.signal.aborted;
      now = passed()
    ) {
      const until = Math.min(seconds, now + PORTION / 1000);
      do run = advanceMostMats(run, 1);
      while (!run.progress.finished && passed() < until);
      const { sentence, whatItIsDoing } = run.progress;
      line.show(`${sentence} ${Math.floor(now)} s; Ctrl-C stops and keeps this. ${whatItIsDoing}`);
      await world.pause();
    }
    const cutOff = stop.signal.aborted ? "interrupted" : "time";
    const { finished, proven } = run.progress;
    return { plan: mostMatPlan(run), ended: proven ? "proven" : finished ? "tried" : cutOff };
  } finally {
    line.clear();
    giveUp();
  }
}
