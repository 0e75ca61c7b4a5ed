import { emptyQueue, type FitEvent, fitQueue } from "../floor/fit-queue.ts";

export type LineRequest<Job> = { readonly id: number; readonly job: Job };
export type LineReply<Answer> =
  | { readonly id: number; readonly ok: true; readonly answer: Answer; readonly milliseconds: number }
  | { readonly id: number; readonly ok: false; readonly says: string };

export type WorkerLine<Job> = { readonly ask: (job: Job) => void; readonly close: () => void };

/** Asks a worker one job at a time; of those that come meanwhile only the newest is kept. */
export function openLine<Job, Answer>(
  worker: Worker,
  deliver: (job: Job, reply: LineReply<Answer>) => void,
): WorkerLine<Job> {
  let queue = emptyQueue<Job>();

  function step(event: FitEvent<Job>): void {
    const before = queue.running;
    queue = fitQueue(queue, event);
    const { running } = queue;
    if (running === null || running === before) return;
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no other origin
    worker.postMessage({ id: running.id, job: running.job } satisfies LineRequest<Job>);
  }

  function answered(reply: LineReply<Answer>): void {
    const { running } = queue;
    if (running === null || reply.id !== running.id) return;
    deliver(running.job, reply);
    step({ kind: "answered", id: reply.id });
  }

  function failed(): void {
    const { running } = queue;
    if (running === null) return;
    answered({ id: running.id, ok: false, says: "It could not be worked out on this device." });
  }

  worker.addEventListener("message", (event: MessageEvent<LineReply<Answer>>) => answered(event.data));
  worker.addEventListener("error", failed);
  return { ask: (job) => step({ kind: "asked", job }), close: () => worker.terminate() };
}

/** What a worker answers to a job; a fault of ours is told, never thrown into the dark. */
export function replyTo<Job, Answer>(
  { id, job }: LineRequest<Job>,
  answer: (job: Job) => Answer,
): LineReply<Answer> {
  const start = performance.now();
  try {
    return { id, ok: true, answer: answer(job), milliseconds: performance.now() - start };
  } catch (error) {
    return { id, ok: false, says: error instanceof Error ? error.message : String(error) };
  }
}
