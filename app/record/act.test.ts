import type { SessionState } from "#core/roll";
import { aRecorder } from "#testing";
import { expect, onTestFinished, test } from "vitest";
import type { DoAskInput } from "./doings/index.ts";
import { turns } from "./in-turn.ts";

const SESSION = "tuesday.2026-12-01";

test("many at once are each answered for themselves: kept, refused, done before, or an id used again", async () => {
  const record = await opened();
  await record.do(take("ana"), "take-by-ana");
  const answers = await Promise.all([
    record.do(take("ben"), "take-by-ben"),
    record.do(take("ben", "again"), "take-by-ben-more"),
    record.do(take("ana"), "take-by-ana"),
    record.do(take("cleo"), "take-by-ana"),
    record.do(take("cleo"), "take-by-cleo"),
    record.do(take("nobody"), "take-by-nobody"),
  ]);
  expect(answers.map((it) => (it.ok ? it.value.outcome : it.problems[0]?.code))).toEqual([
    "held",
    "place-already-held",
    "held",
    "action-reused",
    "held",
    "person-unknown",
  ]);
  const session = await record.state<SessionState>(`session/${SESSION}`);
  expect(session.places.map(({ person }) => person)).toEqual(["ana", "ben", "cleo"]);
});

test("the same action sent three times at once is done once and answered three times", async () => {
  const record = await opened();
  const thrice = [1, 2, 3].map(() => record.do(take("ana"), "take-by-ana"));
  const answers = await Promise.all(thrice);
  expect(answers.map((it) => it.ok && it.value.outcome)).toEqual(["held", "held", "held"]);
  expect((await record.state<SessionState>(`session/${SESSION}`)).places).toHaveLength(1);
});

test("those who come while others are served are served together, in their order, and names do not wait for each other", async () => {
  const inTurn = turns();
  const served: string[] = [];
  const work = async (jobs: readonly string[]) => {
    served.push(jobs.join("+"));
    await Promise.resolve();
    return jobs.map((job) => job.toUpperCase());
  };
  const answers = await Promise.all([
    inTurn("oriel", "a", work),
    inTurn("oriel", "b", work),
    inTurn("ines", "x", work),
    inTurn("oriel", "c", work),
  ]);
  expect(answers).toEqual(["A", "B", "X", "C"]);
  expect(served).toEqual(["a", "x", "b+c"]);
});

test("a failure is told to those it concerns, and the next are served", async () => {
  const inTurn = turns();
  await expect(inTurn("oriel", "a", () => Promise.reject(new Error("disk gone")))).rejects.toThrow(
    "disk gone",
  );
  expect(await inTurn("oriel", "b", (jobs: readonly string[]) => Promise.resolve(jobs))).toBe("b");
});

async function opened() {
  const record = await aRecorder();
  onTestFinished(() => record.close());
  await record.must({
    kind: "open sessions",
    class: "tuesday",
    name: "Slow Tuesday",
    sessions: [{ id: SESSION, date: "2026-12-01", starts: "2026-12-01T18:30:00Z" }],
    zone: "Europe/London",
    minutes: 60,
    hall: null,
    capacity: 4,
    posted: null,
    currency: "GBP",
    single: 1000,
    concession: 800,
    notice: { kind: "elapsed", hours: 24 },
    firstLateWaived: true,
  });
  for (const person of ["ana", "ben", "cleo"])
    await record.must({ kind: "meet person", person, contact: { name: person } });
  return record;
}

function take(person: string, place = "one"): DoAskInput {
  const people = [{ place: `${person}-${place}`, person, how: "single" as const }];
  return { kind: "take place", session: SESSION, people };
}
