import { useCallback, useMemo } from "react";
import { PictureChoice } from "./picture-choice.tsx";
import type { Trace } from "./measuring.ts";
import { readTrace } from "./read-trace.ts";
import { TraceDistances } from "./trace-distances.tsx";
import { TracePicture } from "./trace-picture.tsx";
import { TracedPart } from "./traced-part.tsx";
import { withPicture } from "./trace-steps.ts";
import { UseOutlinePart } from "./use-outline-part.tsx";
import type { OpenedMeasuring } from "./use-measuring.ts";
import { type OnChosen, usePicture } from "./use-picture.ts";

type Props = { readonly practice: string; readonly id: string; readonly opened: OpenedMeasuring };

/** A hall traced over a picture of its plan: the picture and its marks, the distances, what it comes to, the hall. */
export function TraceSheet({ practice, id, opened }: Props) {
  const { measuring, change } = opened;
  const { trace, units } = measuring;
  const put = (next: Trace) => change((before) => ({ ...before, trace: next }));
  const onChosen = useCallback<OnChosen>(
    (size, wasGone) => change((before) => ({ ...before, trace: withPicture(before.trace, size, wasGone) })),
    [change],
  );
  const picture = usePicture(id, onChosen);
  const read = useMemo(() => readTrace(trace, units), [trace, units]);
  const { size } = trace;
  const here = picture.address !== null && size !== null;
  return (
    <>
      <div className="trace-beside">
        <section className="stack" aria-label="The picture">
          {here ? (
            <TracePicture address={picture.address} size={size} trace={trace} put={put} />
          ) : (
            <PictureChoice picture={picture} has={false} />
          )}
          {size !== null && picture.asked && picture.address === null ? (
            <p className="problem-note">
              The picture that was marked is not on this device any more; its marks are. Choose the same
              picture to see them on it.
            </p>
          ) : null}
        </section>
        {size === null ? null : (
          <div>
            <TraceDistances trace={trace} units={units} read={read} put={put} />
            <TracedPart trace={trace} units={units} plan={read.plan} put={put} />
          </div>
        )}
      </div>
      {size === null ? null : (
        <div className="part">
          <UseOutlinePart
            practice={practice}
            opened={opened}
            outline={read.plan.ok ? read.plan.value.outline : null}
          />
        </div>
      )}
      {here ? (
        <section className="part" aria-label="Another picture">
          <PictureChoice picture={picture} has />
        </section>
      ) : null}
    </>
  );
}
