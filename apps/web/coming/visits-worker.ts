import type { VisitsAnswer, VisitsJob, VisitsStage } from "./visits-job.ts";
import { workOutVisits } from "./work-out-visits.ts";

export type VisitsReply =
  | { readonly kind: "stage"; readonly stage: VisitsStage }
  | { readonly kind: "answer"; readonly answer: VisitsAnswer; readonly milliseconds: number }
  | { readonly kind: "failed"; readonly says: string };

const reply = (it: VisitsReply): void => postMessage(it);

addEventListener("message", ({ data }: MessageEvent<VisitsJob>) => {
  const start = performance.now();
  try {
    const answer = workOutVisits(data, (stage) => reply({ kind: "stage", stage }));
    reply({ kind: "answer", answer, milliseconds: performance.now() - start });
  } catch (error) {
    reply({ kind: "failed", says: error instanceof Error ? error.message : String(error) });
  }
});
