import { expect, test } from "vitest";
import { serveSteps } from "./serve-steps.ts";
import { heardStep, newStepList, type StepList } from "./step-list.ts";

type Numbers = StepList<number, number>;

/** 1, 2, … up to the job; 13 cannot be counted. */
function counting() {
  return serveSteps<number, number>((job) => ({ total: job, notes: ["Counted from 1."], items: upTo(job) }));
}

function* upTo(last: number): Generator<number, void, undefined> {
  for (let count = 1; count <= last; count++) {
    if (count === 13) throw new Error("unlucky");
    yield count;
  }
}

test("a list is begun, filled item by item and done", () => {
  const serve = counting();
  let list: Numbers = newStepList(1, 2);
  for (const kind of ["begin", "next", "next", "next"] as const) {
    const reply = serve(kind === "begin" ? { id: 1, kind, job: 2 } : { id: 1, kind });
    if (reply === null) throw new Error("no reply");
    list = heardStep(list, reply);
  }
  expect(list).toEqual({ id: 1, job: 2, state: "done", total: 2, notes: ["Counted from 1."], items: [1, 2] });
});

test("a step of an older list is not taken, and its answer changes nothing", () => {
  const serve = counting();
  serve({ id: 1, kind: "begin", job: 5 });
  serve({ id: 2, kind: "begin", job: 5 });
  expect(serve({ id: 1, kind: "next" })).toBeNull();
  expect(serve({ id: 2, kind: "next" })).toEqual({ id: 2, kind: "item", item: 1 });
  const list: Numbers = newStepList(2, 5);
  expect(heardStep(list, { id: 1, kind: "done" })).toBe(list);
});

test("a fault in a step is told, and what there was stays", () => {
  const serve = counting();
  serve({ id: 1, kind: "begin", job: 20 });
  const replies = Array.from({ length: 13 }, () => serve({ id: 1, kind: "next" }));
  expect(replies.at(-1)).toEqual({ id: 1, kind: "failed", says: "unlucky" });
  const heard = replies.reduce<Numbers>(
    (list, it) => (it === null ? list : heardStep(list, it)),
    newStepList(1, 20),
  );
  expect([heard.state, heard.items.length]).toEqual(["failed", 12]);
});
