import type { KeptStream } from "#app/ports";
import type { DoAskInput } from "#app/record";
import { expect, test } from "vitest";
import { acted } from "./acted.ts";
import { forDevice } from "./for-device.ts";

const made = "2026-11-30T09:00:00.000Z";
const contact = {
  name: "Ana Brook",
  phone: "01632 960100",
  emergencyName: "Bea",
  emergencyPhone: "01632 960101",
};
const asks: readonly DoAskInput[] = [
  { kind: "meet person", person: "ana", contact },
  { kind: "meet person", person: "ben", contact: { ...contact, name: "Ben Hale" } },
  { kind: "consent", person: "ana", to: "health", given: true, wording: "a short note" },
  { kind: "health form", person: "ana", speak: true, reviewBy: "2027-12-01", note: "left knee" },
  {
    kind: "open sessions",
    class: "tuesday",
    name: "Slow Tuesday",
    sessions: [
      { id: "tuesday.2026-12-01", date: "2026-12-01", starts: "2026-12-01T18:30:00Z" },
      { id: "tuesday.2027-01-05", date: "2027-01-05", starts: "2027-01-05T18:30:00Z" },
    ],
    zone: "Europe/London",
    minutes: 60,
    hall: null,
    capacity: 4,
    posted: null,
    currency: "GBP",
    single: 1000,
    concession: 1000,
    notice: { kind: "elapsed", hours: 24 },
    firstLateWaived: true,
  },
  {
    kind: "take place",
    session: "tuesday.2026-12-01",
    people: [{ place: "pl-1", person: "ana", how: "single" }],
  },
];

test("of health only the dot is kept on the device, and no word of a form, its date or its consent", () => {
  const text = JSON.stringify(kept());
  expect(text).toContain('"speak":true');
  expect(text).not.toMatch(/knee|2027-12-01|a short note|"health":/);
});

test("a phone and whom to ring are kept of those who come to an evening that is near, a name of everybody", () => {
  const people = kept().filter(({ stream }) => stream.startsWith("person/"));
  expect(people.map(({ state }) => state)).toMatchObject([
    { contact: { name: "Ana Brook", emergencyPhone: "01632 960101" } },
    { contact: { name: "Ben Hale", phone: "", emergencyPhone: "" }, healthForm: null },
  ]);
});

test("an evening more than a fortnight away is not kept on the device", () => {
  const sessions = kept().filter(({ stream }) => stream.startsWith("session/"));
  expect(sessions.map(({ stream }) => stream)).toEqual(["session/tuesday.2026-12-01"]);
});

function kept(): readonly KeptStream[] {
  const streams = asks.reduce<readonly KeptStream[]>((before, ask) => {
    const after = acted(before, { do: ask, made }, "en-GB");
    if (!after.ok) throw new Error(JSON.stringify(after.problems));
    return after.value.streams;
  }, []);
  return forDevice(streams, made);
}
