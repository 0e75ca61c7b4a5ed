import {
  type Arrangement,
  type BestSight,
  bestSight,
  capacityCaution,
  type Hall,
  type SightPlan,
} from "#core/hall";
import { bad, good, problem, type Result } from "#core/words";
import type { Answer } from "./command.ts";
import { capacityFor, type FitJob, setOutText } from "./fit-one.ts";
import { layingInMetres, planInMetres } from "./plan-in-metres.ts";
import { progressLine } from "./progress-line.ts";
import type { World } from "./world.ts";

type Searched = { readonly found: BestSight; readonly stopped: boolean; readonly ms: number };

/**
 * So many mats laid so that as few as can be found cannot see the teacher, of one arrangement or of any. Ctrl-C ends
 * the search with the best so far. Problem: "sight-plan-none".
 */
export async function fitSight(
  job: FitJob,
  count: number,
  arrangement: Arrangement | undefined,
  world: World,
): Promise<Result<Answer>> {
  const { hall } = job;
  const { found, stopped, ms } = await searched(hall, count, arrangement, world);
  const { best } = found;
  if (best === null) {
    const next = "Ask for fewer mats, or draw where the teacher stands.";
    return bad(problem("sight-plan-none", "--mats", found.sentences.join(" "), next));
  }
  const { capacity, limitedBy } = capacityFor(job, { count, bound: count, proven: true });
  const told = stopped
    ? [...found.sentences, "The search was stopped before all plans were tried."]
    : found.sentences;
  return good({
    text: sightText(hall, best, told),
    json: {
      ...planInMetres(best.plan),
      capacity,
      limitedBy,
      setOut: layingInMetres(best.plan),
      cannotSee: best.sight.hidden.map((it) => it.mat),
      leftOut: best.leftOut,
      exact: best.exact,
      tried: found.tried,
      of: found.of,
      sentences: told,
      ms,
    },
  });
}

async function searched(
  hall: Hall,
  count: number,
  arrangement: Arrangement | undefined,
  world: World,
): Promise<Searched> {
  const stop = new AbortController();
  const giveUp = world.onInterrupt(() => stop.abort());
  const line = progressLine(world);
  const began = world.clock();
  let found: BestSight = { best: null, tried: 0, of: 0, proven: false, sentences: [] };
  try {
    const solver = await world.solver();
    for (const step of bestSight(hall, count, solver, arrangement === undefined ? {} : { arrangement })) {
      found = step;
      line.show(progressSays(step));
      await world.pause();
      if (stop.signal.aborted) break;
    }
    const ms = Math.round((world.clock() - began) * 1000) / 1000;
    return { found, stopped: stop.signal.aborted, ms };
  } finally {
    line.clear();
    giveUp();
  }
}

function progressSays({ best, tried, of }: BestSight): string {
  const so = best === null ? "none with so many mats yet" : `${best.sight.hidden.length} cannot see so far`;
  return `Plan ${tried} of ${of}: ${so}. Ctrl-C stops and keeps this.`;
}

function sightText(hall: Hall, { plan, sight }: SightPlan, told: readonly string[]): string {
  const who = sight.hidden.length === 0 ? [] : sight.sentences.slice(1);
  return `${[hall.name, ...told, ...who].join("\n")}\n${setOutText(plan)}\n${capacityCaution}\n`;
}
