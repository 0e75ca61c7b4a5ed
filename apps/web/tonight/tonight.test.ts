import type { KeptStream } from "#app/ports";
import type { DoAskInput } from "#app/record";
import type { SessionState } from "#core/roll";
import { isCurrency } from "#core/words";
import { expect, test } from "vitest";
import { acted } from "../record/acted.ts";
import { type Lookup, lookup } from "../record/lookup.ts";
import { screenWriter } from "../record/screen-writer.ts";
import { countSentence, headsExpected } from "./heads-expected.ts";
import { howChoices } from "./how-choices.ts";
import { pickTonight, upcoming } from "./pick-tonight.ts";
import { registerRows } from "./register-rows.ts";
import { dayClock, startsAt } from "./session-times.ts";
import { takingsOf, totalOf } from "./takings.ts";
import { markedSentence, tonightSentence } from "./tonight-sentence.ts";
import { minorTyped } from "./amount-box.tsx";

const writer = screenWriter("en-GB");
const made = "2026-12-01T12:00:00.000Z";
const id = "tuesday.2026-12-01";
const hall = "Tithe Barn Hall";

test("the answer comes first: mats taken, who waits, who has not paid, and the day only when it is another", () => {
  // 3 mats: Ana by pass, Ben paid 10.00, Cora owes 10.00; Dov waits
  const { session } = evening();
  expect(tonightSentence({ session, hall, now: "2026-12-01T17:00:00Z", writer })).toBe(
    "Slow Tuesday at 18:30 in Tithe Barn Hall: 3 of 3 mats taken, 1 waits, 1 has not paid.",
  );
  expect(tonightSentence({ session, hall, now: "2026-11-30T17:00:00Z", writer })).toMatch(
    /^Slow Tuesday on Tuesday 1 December 2026 at 18:30 in Tithe Barn Hall: /,
  );
});

test("a row tells how somebody comes, what is left after it, and a dot, with no word of why", () => {
  const { session, look } = evening();
  const rows = registerRows(id, session, look, writer);
  expect(rows.map(({ name, how, owes, speak }) => ({ name, how, owes, speak }))).toEqual([
    // ten classes, none used, this one promised: 9 after it
    { name: "Ana Brook", how: "pass, 9 left after this", owes: 0, speak: true },
    { name: "Ben Hale", how: "single, £10.00 by cash", owes: 0, speak: false },
    { name: "Cora Finch", how: "single, £10.00 not paid", owes: 1000, speak: false },
  ]);
  expect(JSON.stringify(rows)).not.toContain("knee");
});

test("after a mark a pass has as many left as before the evening less one", () => {
  const { session, look } = evening([{ kind: "mark", session: id, place: "pl-ana", as: "attended" }]);
  expect(registerRows(id, session, look, writer)[0]?.how).toBe("pass, 9 left after this");
  expect(markedSentence(session)).toBe("1 here, 2 not marked yet.");
});

test("a pass comes before money among the ways to have a place, and of nobody else", () => {
  const { session, look } = evening();
  const values = (person: string) =>
    howChoices("tuesday.2026-12-08", session, person, look, writer).map(({ value }) => value);
  expect(values("ana")).toEqual(["pass:ten", "single", "concession", "free", "guest"]);
  expect(values("ben")).toEqual(["single", "concession", "free", "guest"]);
});

test("heads: those marked as here, the teacher and whoever is on no register; who is missing is said in numbers", () => {
  const { session } = evening([{ kind: "mark", session: id, place: "pl-ana", as: "attended" }]);
  // Ana, the teacher, two helpers
  expect(headsExpected(session, 2)).toBe(4);
  expect(countSentence(4, 4)).toBe("All 4 are counted.");
  expect(countSentence(4, 3)).toMatch(/^1 is missing: 3 counted, 4 expected\./);
  expect(countSentence(4, 6)).toMatch(/^2 more than the register/);
});

test("takings of a session are what came in less what went back, by means", () => {
  const { session } = evening([
    { kind: "pay place", session: id, place: "pl-cora", amount: 1000, by: "card" },
    { kind: "give money back", session: id, place: "pl-ben", amount: 400, by: "cash" },
  ]);
  const takings = takingsOf(session);
  expect(takings).toEqual({ cash: 600, card: 1000, bank: 0 });
  expect(totalOf(takings)).toBe(1600);
});

test("tonight is the session that is on, else the next one; one that is closed or does not take place is passed over", () => {
  const { look } = evening();
  const at = (now: string) => pickTonight(look.sessions, now)?.id;
  expect(at("2026-11-28T09:00:00Z")).toBe(id);
  // an hour after the end and not closed
  expect(at("2026-12-01T20:30:00Z")).toBe(id);
  expect(at("2026-12-02T09:00:00Z")).toBe("tuesday.2026-12-08");
  const closed = evening([{ kind: "close register", session: id }]).look;
  expect(pickTonight(closed.sessions, "2026-12-01T20:30:00Z")?.id).toBe("tuesday.2026-12-08");
  expect(upcoming(look.sessions, "2026-12-01T09:00:00Z").map((it) => it.id)).toEqual([
    id,
    "tuesday.2026-12-08",
  ]);
});

test("the same clock is another instant after the clocks changed", () => {
  // London: summer time until 25 October 2026
  expect(startsAt("2026-10-20", "18:30", "Europe/London")).toBe("2026-10-20T17:30:00Z");
  expect(startsAt("2026-10-27", "18:30", "Europe/London")).toBe("2026-10-27T18:30:00Z");
  expect(startsAt("2026-10-27", "half six", "Europe/London")).toBeNull();
  // and back, by the clock of the hall: 19:30 UTC is 13:30 in Chicago in November
  expect(dayClock("2026-11-25T19:30:12Z", "America/Chicago")).toEqual({ day: "2026-11-25", clock: "13:30" });
});

test("an amount is read as typed, with or without its sign", () => {
  const currency = "GBP";
  if (!isCurrency(currency)) throw new Error(currency);
  expect(minorTyped("£9.5", currency)).toBe(950);
  expect(minorTyped("nine", currency)).toBeNull();
});

/** Three mats on 1 December: Ana by pass and with a dot, Ben who paid in cash, Cora who did not, Dov waiting. */
function evening(more: readonly DoAskInput[] = []): { session: SessionState; look: Lookup } {
  const streams = [...opened, ...people, ...places, ...more].reduce<readonly KeptStream[]>((before, ask) => {
    const after = acted(before, { do: ask, made }, "en-GB");
    if (!after.ok) throw new Error(JSON.stringify(after.problems));
    return after.value.streams;
  }, []);
  const look = lookup(streams);
  const session = look.session(id);
  if (session === undefined) throw new Error("the evening is not there");
  return { session, look };
}

const opened: readonly DoAskInput[] = [
  {
    kind: "open sessions",
    class: "tuesday",
    name: "Slow Tuesday",
    sessions: ["2026-12-01", "2026-12-08"].map((date) => ({
      id: `tuesday.${date}`,
      date,
      starts: `${date}T18:30:00Z`,
    })),
    zone: "Europe/London",
    minutes: 60,
    hall: "tithe-barn",
    capacity: 3,
    posted: 60,
    currency: "GBP",
    single: 1000,
    concession: 800,
    notice: { kind: "elapsed", hours: 24 },
    firstLateWaived: true,
  },
];

const people: readonly DoAskInput[] = [
  ...["Ana Brook", "Ben Hale", "Cora Finch", "Dov Amber"].map(
    (name): DoAskInput => ({
      kind: "meet person",
      person: name.slice(0, name.indexOf(" ")).toLowerCase(),
      contact: { name },
    }),
  ),
  { kind: "consent", person: "ana", to: "health", given: true, wording: "a short note" },
  { kind: "health form", person: "ana", speak: true, reviewBy: "2027-12-01", note: "left knee" },
  {
    kind: "sell pass",
    pass: "ten",
    form: "pass",
    holder: "ana",
    name: "Ten classes",
    on: "2026-11-24",
    size: 10,
    price: 8500,
    currency: "GBP",
    paid: "card",
    useBy: "2027-03-31",
    valid: "all",
    terms: { perClassOnRefund: null, transferable: false, pauses: 1 },
  },
];

const places: readonly DoAskInput[] = [
  take("ana", { how: "pass", pass: "ten" }),
  take("ben", { how: "single", paid: { amount: 1000, by: "cash" } }),
  take("cora", { how: "single" }),
  take("dov", { how: "single" }),
];

type How = Omit<Extract<DoAskInput, { kind: "take place" }>["people"][number], "place" | "person">;

function take(person: string, how: How): DoAskInput {
  return { kind: "take place", session: id, people: [{ place: `pl-${person}`, person, ...how }] };
}
