import { arrangedPlan } from "#core/hall";
import type { FitAnswer, FitRequest } from "./fit-messages.ts";
import { mostSearch, type MostSearch } from "./most-search.ts";

let search: { readonly id: number; readonly most: MostSearch } | null = null;

addEventListener("message", ({ data }: MessageEvent<FitRequest>) => {
  switch (data.kind) {
    case "fit":
      fit(data);
      break;
    case "rest":
      if (search?.id === data.id) search.most.rest();
      break;
    case "go on":
      if (search?.id === data.id) search.most.goOn();
      break;
  }
});

function fit({ id, job: { hall, arrangement } }: Extract<FitRequest, { kind: "fit" }>): void {
  const start = performance.now();
  const taken = () => performance.now() - start;
  search?.most.leave();
  search = null;
  try {
    if (arrangement === "most") {
      const most = mostSearch(hall, (found) => post({ id, ok: true, ...found, milliseconds: taken() }));
      search = { id, most };
    } else {
      const plan = arrangedPlan(hall, arrangement);
      post({ id, ok: true, plan, milliseconds: taken(), search: null });
    }
  } catch (error) {
    // a broken precondition of ours: the screen keeps the last plan and says that it is old
    post({ id, ok: false, says: error instanceof Error ? error.message : String(error) });
  }
}

function post(answer: FitAnswer): void {
  postMessage(answer);
}
