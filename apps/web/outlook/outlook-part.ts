import type { OutlookSheet } from "#app/views";
import type { ClassOutlook } from "#core/class";
import type { ClassPart } from "../class-sheet/class-part.ts";
import type { Draft } from "../drafts/draft.ts";
import type { WorkerAnswer } from "../prices/use-worker-answer.ts";

/** What the sections about a class's future are given. */
export type OutlookSection = ClassPart & {
  readonly asked: WorkerAnswer<OutlookSheet>;
  readonly typed: Draft<unknown>["typed"];
};

/** Changes one part of the outlook and leaves the others; undefined takes the part away. */
export function putOutlook<Name extends keyof ClassOutlook>(
  { document, change }: ClassPart,
  name: Name,
  part: ClassOutlook[Name] | undefined,
): void {
  const { [name]: _, ...others } = document.outlook ?? {};
  change({ outlook: part === undefined ? others : { ...others, [name]: part } });
}
