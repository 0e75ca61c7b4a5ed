import { expect, test } from "vitest";
import { arrowPoints } from "./arrow-points.ts";
import { markingWords } from "./marking-words.ts";
import { newMeasuring, type Trace } from "./measuring.ts";
import { readTrace } from "./read-trace.ts";
import { mark, nextMarking, takeCornerBack, withPicture } from "./trace-steps.ts";

const begun = newMeasuring({
  way: "picture",
  hall: null,
  name: "",
  units: "metric",
  begun: "2026-11-25",
}).trace;
const codes = (trace: Trace) => {
  const { plan } = readTrace(trace, "metric");
  return plan.ok ? [] : plan.problems.map((it) => it.code);
};

/** A plan of 8 × 12 m at 50 points to the metre with its known distance along A–B. */
const traced = ((): Trace => {
  let trace = withPicture(begun, { width: 700, height: 800 });
  trace = mark(mark(trace, "known", [150, 700]), "known", [550, 700]);
  for (const at of [
    [150, 700],
    [550, 700],
    [550, 100],
    [150, 100],
  ] as const)
    trace = mark(trace, nextMarking(trace), at);
  return { ...trace, known: { ...trace.known, length: "8" } };
})();

test("first the known distance is marked, then the corners, and the words say which comes next", () => {
  const one = mark(begun, "known", [150, 700]);
  expect([nextMarking(begun), nextMarking(one), nextMarking(traced)]).toEqual(["known", "known", "corners"]);
  expect(markingWords(one, "known")).toBe("Mark the other end of the distance that you know.");
  expect(markingWords(traced, "corners")).toBe("Corner D is marked. Mark corner E, if there is one more.");
  const { plan } = readTrace(traced, "metric");
  expect(plan.ok && plan.value.outline).toEqual([
    [0, 0],
    [8000, 0],
    [8000, 12_000],
    [0, 12_000],
  ]);
});

test("a third mark for a distance moves its nearer end", () => {
  expect(mark(traced, "known", [540.4, 690]).known).toMatchObject({ from: [150, 700], to: [540, 690] });
});

test("what is missing is told one after the other", () => {
  expect(codes(begun)).toEqual(["trace-marks-missing"]);
  expect(codes(mark(begun, "known", [1, 1]))).toEqual(["trace-marks-missing"]);
  expect(codes({ ...traced, known: { ...traced.known, length: "" } })).toEqual(["length-unreadable"]);
  expect(codes({ ...traced, known: { ...traced.known, length: "wide" } })).toEqual(["length-unreadable"]);
  expect(codes({ ...traced, corners: [] })).toEqual(["trace-corners"]);
});

test("a second distance that is half given is told, and does not keep the first from being used", () => {
  const half = readTrace(mark(traced, "check", [150, 700]), "metric");
  expect([half.plan.ok, half.checkProblem?.code]).toEqual([true, "trace-marks-missing"]);
  expect(readTrace(traced, "metric").checkProblem).toBeUndefined();
});

test("the last corner is taken back, and another picture keeps the distances that were typed", () => {
  expect(takeCornerBack(traced).corners).toHaveLength(3);
  const other = withPicture(traced, { width: 100, height: 100 });
  expect(other).toMatchObject({ corners: [], known: { from: null, to: null, length: "8" } });
});

test("a picture that was lost and is chosen again has its marks again", () => {
  expect(withPicture(traced, { width: 700, height: 800 }, true)).toEqual(traced);
  expect(withPicture(traced, { width: 700, height: 800 }, false).corners).toEqual([]);
  expect(withPicture(traced, { width: 800, height: 700 }, true).corners).toEqual([]);
});

test("arrow keys move by 10 points, with Shift by 50, with Alt by 1", () => {
  const press = { shiftKey: false, altKey: false };
  expect(arrowPoints({ ...press, key: "ArrowUp" })).toEqual([0, -10]);
  expect(arrowPoints({ ...press, key: "ArrowLeft", shiftKey: true })).toEqual([-50, 0]);
  expect(arrowPoints({ ...press, key: "ArrowRight", altKey: true })).toEqual([1, 0]);
  expect(arrowPoints({ ...press, key: "a" })).toBeNull();
});
