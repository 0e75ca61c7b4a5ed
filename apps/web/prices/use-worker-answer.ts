import { useEffect, useMemo, useRef, useState } from "react";
import { type LineReply, openLine, type WorkerLine } from "./worker-line.ts";

export type WorkerAnswer<Answer> = {
  /** the last answer there is; null before the first */
  readonly answer: Answer | null;
  /** it belongs to an earlier question */
  readonly old: boolean;
  /** the last question could not be worked out */
  readonly failure: string | null;
  /** how long the last answer took in the worker */
  readonly milliseconds: number | null;
};

type Kept<Answer> = { readonly job: object; readonly reply: LineReply<Answer> };

/**
 * The answer to a question, worked out beside the page: the newest question is always answered, and the last
 * answer stays until then. `start` must be the same function at every render; null asks nothing.
 */
export function useWorkerAnswer<Answer>(start: () => Worker, job: object | null): WorkerAnswer<Answer> {
  const [good, setGood] = useState<Kept<Answer> | null>(null);
  const [last, setLast] = useState<Kept<Answer> | null>(null);
  const line = useRef<WorkerLine<object> | null>(null);
  useEffect(() => {
    const opened = openLine<object, Answer>(start(), (asked, reply) => {
      setLast({ job: asked, reply });
      if (reply.ok) setGood({ job: asked, reply });
    });
    line.current = opened;
    return () => {
      line.current = null;
      opened.close();
    };
  }, [start]);
  useEffect(() => {
    if (job !== null) line.current?.ask(job);
  }, [job]);
  const reply = good?.reply;
  const old = good !== null && good.job !== job;
  const failure = last !== null && last.job === job && !last.reply.ok ? last.reply.says : null;
  // the same object until something of it changes, for whoever draws it
  return useMemo(
    () => ({
      answer: reply?.ok === true ? reply.answer : null,
      old,
      failure,
      milliseconds: reply?.ok === true ? reply.milliseconds : null,
    }),
    [reply, old, failure],
  );
}
