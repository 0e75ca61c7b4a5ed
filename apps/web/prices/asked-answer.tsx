import type { SheetPart } from "#app/views";
import { PartAnswer } from "../class-sheet/part-answer.tsx";
import type { Draft } from "../drafts/draft.ts";
import type { WorkerAnswer } from "./use-worker-answer.ts";

type Props = {
  readonly asked: Pick<WorkerAnswer<unknown>, "old" | "failure">;
  readonly part: SheetPart | undefined;
  readonly typed: Draft<unknown>["typed"];
  readonly fields: readonly string[];
};

/** The answer of a part that is worked out beside the page; until it is there, what is being done. */
export function AskedAnswer({ asked, part, typed, fields }: Props) {
  return (
    <div className="stack-close" data-old={asked.old || undefined}>
      {asked.failure === null ? null : <p className="problem-note">{asked.failure}</p>}
      {part !== undefined ? <PartAnswer part={part} typed={typed} fields={fields} /> : null}
      {part === undefined && asked.failure === null ? (
        <p className="answer" data-withheld>
          Working it out …
        </p>
      ) : null}
    </div>
  );
}
