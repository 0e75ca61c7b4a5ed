import { acceptAtMost } from "#core/outlook";
import type { SessionState } from "#core/roll";
import { aRecorder } from "#testing";
import { expect, onTestFinished, test } from "vitest";
import type { DoAskInput } from "./doings/index.ts";
import { registerHeads } from "./register-heads.ts";

/*
 * A free first class: 18 mats, 16 wanted, the hall's own number is 60, 60 of 100 come, several in pairs. 19 are
 * accepted, the next ones wait, and 17 come.
 */
const ID = "tuesday.2027-01-12";
const barn = { room: 16, hardStop: 59, turnUp: 0.6, risk: 0.05, paid: false } as const;

test("nineteen are accepted, whoever comes next waits, seventeen come, and the record says so", async () => {
  const accept = acceptAtMost({ ...barn, together: { kind: "alike", correlation: 0.05 } });
  expect(accept).toBe(19);
  // if each decided alone it would be two more
  expect(acceptAtMost({ ...barn, together: { kind: "alone" } })).toBe(21);
  const record = await aRecorder();
  onTestFinished(() => record.close());
  await record.must(opened(accept));
  // five pairs and nine who come alone are nineteen
  const outcomes: (string | undefined)[] = [];
  for (const party of PARTIES) {
    for (const person of party) await record.must({ kind: "meet person", person, contact: { name: person } });
    outcomes.push((await record.must(take(party))).outcome);
  }
  expect(outcomes.slice(0, 14)).toEqual(Array.from({ length: 14 }, () => "held"));
  // the twentieth, and a pair after it
  expect(outcomes.slice(14)).toEqual(["waiting", "waiting"]);

  record.at("2027-01-12T19:00:00Z");
  for (const person of PARTIES.slice(0, 14).flat().slice(0, 17))
    await record.must({ kind: "mark", session: ID, place: `pl-${person}`, as: "attended" });
  await record.must({ kind: "close register", session: ID });
  const session = await record.state<SessionState>(`session/${ID}`);
  const states = session.places.map(({ state }) => state);
  expect(states.filter((it) => it === "attended")).toHaveLength(17);
  expect(states.filter((it) => it === "not come")).toHaveLength(2);
  expect(registerHeads([session], { sessions: [] })).toEqual([
    { date: "2027-01-12", heads: 17, capacity: 19, newcomers: 17, waiting: 3 },
  ]);
  // it was free: nobody owes and nothing is earned
  expect(await record.postings()).toEqual([]);
});

const PAIRS = [0, 1, 2, 3, 4].map((it) => [`p-${it}`, `q-${it}`] as const);
const ALONE = [0, 1, 2, 3, 4, 5, 6, 7, 8].map((it) => [`s-${it}`] as const);
const PARTIES = [...PAIRS, ...ALONE, ["late-1"], ["late-2", "late-3"]] as const;

function take(party: readonly string[]): DoAskInput {
  const people = party.map((person) => ({ place: `pl-${person}`, person, how: "free" as const }));
  return { kind: "take place", session: ID, people };
}

function opened(capacity: number): DoAskInput {
  return {
    kind: "open sessions",
    class: "tuesday",
    name: "First evening, free",
    sessions: [{ id: ID, date: "2027-01-12", starts: "2027-01-12T18:30:00Z" }],
    zone: "Europe/London",
    minutes: 60,
    hall: null,
    capacity,
    posted: 60,
    currency: "GBP",
    single: 0,
    concession: 0,
    notice: { kind: "elapsed", hours: 24 },
    firstLateWaived: true,
  };
}
