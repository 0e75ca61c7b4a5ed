import { describe, expect, it } from "vitest";
import { emptyQueue, fitQueue } from "./fit-queue.ts";

const asked = (job: string) => ({ kind: "asked", job }) as const;

describe("fitQueue", () => {
  it("runs the first job at once", () => {
    expect(fitQueue(emptyQueue<string>(), asked("a")).running).toEqual({ id: 1, job: "a" });
  });

  it("lets only the newest wait", () => {
    const queue = ["a", "b", "c"].map(asked).reduce(fitQueue, emptyQueue<string>());
    expect(queue.running?.job).toBe("a");
    expect(queue.waiting?.job).toBe("c");
    expect(fitQueue(queue, { kind: "answered", id: 1 }).running).toEqual({ id: 3, job: "c" });
  });

  it("passes over an answer to a job that was given up", () => {
    const queue = ["a", "b"].map(asked).reduce(fitQueue, emptyQueue<string>());
    const after = fitQueue(queue, { kind: "given up" });
    expect(after.running?.job).toBe("b");
    expect(fitQueue(after, { kind: "answered", id: 1 })).toBe(after);
  });
});
