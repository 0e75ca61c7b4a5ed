import { useCallback, useEffect, useRef, useState } from "react";
import type { VisitsAnswer, VisitsJob, VisitsStage } from "./visits-job.ts";
import type { VisitsReply } from "./visits-worker.ts";

export type VisitsState = {
  /** the last answer there is; it stands while the next is worked out */
  readonly answer: VisitsAnswer | null;
  readonly milliseconds: number | null;
  readonly now:
    | { readonly kind: "rest" }
    | { readonly kind: "busy"; readonly stage: VisitsStage }
    | { readonly kind: "stopped" }
    | { readonly kind: "failed"; readonly says: string };
};

const atRest: VisitsState = { answer: null, milliseconds: null, now: { kind: "rest" } };

/**
 * Works a file of visits out beside the page. A fit cannot be interrupted, so that stopping, and a newer question,
 * end the worker; the next one starts in some ten milliseconds.
 */
export function useVisits(job: VisitsJob) {
  const [state, setState] = useState<VisitsState>(atRest);
  const worker = useRef<Worker | null>(null);
  const end = useCallback(() => {
    worker.current?.terminate();
    worker.current = null;
  }, []);
  const begin = useCallback(
    (asked: VisitsJob) => {
      end();
      const fresh = new Worker(new URL("./visits-worker.ts", import.meta.url), { type: "module" });
      worker.current = fresh;
      fresh.addEventListener("message", ({ data }: MessageEvent<VisitsReply>) => {
        if (worker.current === fresh) setState((before) => heard(before, data));
      });
      fresh.addEventListener("error", () => {
        const says = "The part of the program that does this could not be started.";
        if (worker.current === fresh) setState((before) => ({ ...before, now: { kind: "failed", says } }));
      });
      // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no other origin
      fresh.postMessage(asked);
    },
    [end],
  );
  useEffect(() => {
    begin(job);
    return end;
  }, [job, begin, end]);
  const stop = () => {
    end();
    setState((before) => ({ ...before, now: { kind: "stopped" } }));
  };
  return { state, stop, again: () => begin(job) };
}

function heard(before: VisitsState, reply: VisitsReply): VisitsState {
  switch (reply.kind) {
    case "stage":
      return { ...before, now: { kind: "busy", stage: reply.stage } };
    case "answer":
      return { answer: reply.answer, milliseconds: reply.milliseconds, now: { kind: "rest" } };
    case "failed":
      return { ...before, now: { kind: "failed", says: reply.says } };
  }
}
