import { readWeek, type WeekDocument, type WeekStep, weekSteps } from "#core/week";
import type { Locale } from "#core/words";
import type { Solver } from "#kernels/search";
import { loadSearchSolver } from "../floor/load-search-solver.ts";
import { moneyWords } from "../words/money-words.ts";
import { serveSteps } from "../worth/serve-steps.ts";
import type { StepsRequest } from "../worth/steps-messages.ts";

/** A week to be answered piece by piece; it was found sound before it was sent here. */
export type WeekJob = { readonly document: WeekDocument; readonly locale: Locale };

const loaded = loadSearchSolver().then((solver) => serverOver(solver));

function serverOver(solver: Solver | null) {
  return serveSteps<WeekJob, WeekStep>(({ document, locale }) => {
    if (solver === null) throw new Error("The solver that finds the best week could not be loaded.");
    const week = readWeek(document);
    if (!week.ok) throw new RangeError(week.problems[0]?.says);
    const write = (...[exact, currency]: Parameters<Parameters<typeof weekSteps>[2]>) =>
      moneyWords(exact, currency, locale);
    const { candidates, target } = week.value;
    // the week, a line for each candidate, two curves, and the target
    const total = 1 + candidates.length + 2 + (target === null ? 0 : 1);
    return { total, notes: [], items: weekSteps(week.value, solver, write) };
  });
}

addEventListener("message", ({ data }: MessageEvent<StepsRequest<WeekJob>>) => {
  void answer(data);
});

async function answer(request: StepsRequest<WeekJob>): Promise<void> {
  const serve = await loaded;
  const reply = serve(request);
  if (reply !== null) postMessage(reply);
}
