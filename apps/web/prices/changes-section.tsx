import type { ChangeRow, PriceSheet } from "#app/views";
import { SheetSection } from "../class-sheet/sheet-section.tsx";
import type { Draft } from "../drafts/draft.ts";
import { AskedAnswer } from "./asked-answer.tsx";
import { ChangeList } from "./change-list.tsx";
import type { WorkerAnswer } from "./use-worker-answer.ts";

type Props = {
  readonly asked: WorkerAnswer<PriceSheet>;
  readonly typed: Draft<unknown>["typed"];
};

const none: readonly ChangeRow[] = [];

/** By how much each figure would have to be wrong before the answer is another. */
export function ChangesSection({ asked, typed }: Props) {
  const part = asked.answer?.changes;
  const ready = part?.kind === "ready" ? part : { evening: none, studio: none };
  return (
    <SheetSection
      id="change"
      title="What would change this"
      answer={
        <AskedAnswer
          asked={asked}
          part={part}
          typed={typed}
          fields={["heads", "prices", "mix", "planning"]}
        />
      }
      picture={<ChangeList title="Whether an evening pays on average" rows={ready.evening} />}
      working={
        ready.studio.length === 0 ? null : (
          <ChangeList title="Whether your own class or the studio is the better hour" rows={ready.studio} />
        )
      }
      inputs={null}
    />
  );
}
