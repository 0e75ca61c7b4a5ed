import type { PriceSheet } from "#app/views";
import { ProblemList } from "../parts/problem-list.tsx";
import type { WorkerAnswer } from "./use-worker-answer.ts";

/** Whether the prices hold together, and each thing that does not. What the prices themselves lack is told above. */
export function LadderAnswer({ asked }: { readonly asked: WorkerAnswer<PriceSheet> }) {
  const ladder = asked.answer?.ladder;
  if (ladder?.kind !== "ready") return null;
  const [first = "", ...others] = ladder.says;
  return (
    <div className="stack-close">
      <p className="answer">{first}</p>
      <ProblemList problems={ladder.findings} announce={false} />
      {others.map((says) => (
        <p key={says}>{says}</p>
      ))}
    </div>
  );
}
