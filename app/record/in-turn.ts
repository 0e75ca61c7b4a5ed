/** How many of those who wait are served at once: more would only make the first of them wait longer. */
const MOST_AT_ONCE = 64;

/** Joins those who wait under a name; the work is given as many of them as have come meanwhile, in their order. */
export type InTurn = <Job, Answer>(
  name: string,
  job: Job,
  work: (jobs: readonly Job[]) => Promise<readonly Answer[]>,
) => Promise<Answer>;

type Waiter = {
  readonly job: unknown;
  readonly answer: (answer: unknown) => void;
  readonly fail: (error: unknown) => void;
};

/**
 * Jobs of one name are done one after another, in the order in which they came, and all that waited while others were
 * served are done together: fifty people at once cost a few writes to the disk and not fifty. One server so never
 * races with itself for the last mat; what another program does is caught by the store.
 */
export function turns(): InTurn {
  const waiting = new Map<string, Waiter[]>();
  return async (name, job, work) => {
    const done = await new Promise((answer, fail) => {
      const waiter = { job, answer, fail };
      const queue = waiting.get(name);
      if (queue !== undefined) return void queue.push(waiter);
      waiting.set(name, [waiter]);
      // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- a name is served by one kind of work
      return void serve(waiting, name, work as Work);
    });
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- what the work gave for this job
    return done as Awaited<ReturnType<typeof work>>[number];
  };
}

type Work = (jobs: readonly unknown[]) => Promise<readonly unknown[]>;

async function serve(waiting: Map<string, Waiter[]>, name: string, work: Work): Promise<void> {
  for (;;) {
    const served = waiting.get(name)?.splice(0, MOST_AT_ONCE) ?? [];
    if (served.length === 0) break;
    // oxlint-disable-next-line no-await-in-loop -- one after another is what this is for
    await serveAll(served, work);
  }
  waiting.delete(name);
}

async function serveAll(served: readonly Waiter[], work: Work): Promise<void> {
  try {
    const answers = await work(served.map(({ job }) => job));
    for (const [number, { answer }] of served.entries()) answer(answers[number]);
  } catch (error) {
    // each of them answers to whoever asked
    for (const { fail } of served) fail(error);
  }
}
