import { expect, test } from "vitest";
import { applyAccident } from "./accident-event.ts";
import type { PersonEvent } from "./person-event.ts";
import { applyPerson, consents, type PersonState } from "./person-state.ts";

const contact = {
  name: "Ana Brook",
  phone: "01632 960100",
  email: "ana@example.org",
  emergencyName: "Tom Brook",
  emergencyPhone: "01632 960101",
  heard: "poster",
};

test("consents stand apart, dated, and are taken back one by one (ROLL-20)", () => {
  const ana = told(
    ["2026-09-01T18:00:00Z", { kind: "met", contact }],
    ["2026-09-01T18:02:00Z", { kind: "consented", to: "photo", given: true, wording: "for the poster" }],
    ["2026-09-01T18:02:00Z", { kind: "consented", to: "news", given: true, wording: "dates of classes" }],
    ["2026-10-06T18:00:00Z", { kind: "consented", to: "photo", given: false, wording: "for the poster" }],
  );
  expect(consents(ana, "photo")).toBe(false);
  expect(ana.consents.photo?.at).toBe("2026-10-06T18:00:00Z");
  expect(consents(ana, "news")).toBe(true);
  expect(consents(ana, "hands-on")).toBe(false);
});

test("a form leaves a date and a dot, and no word of health (ROLL-21)", () => {
  const ana = told(
    ["2026-09-01T18:00:00Z", { kind: "met", contact }],
    ["2026-09-01T18:02:00Z", { kind: "health form", speak: true, reviewBy: "2027-09-01" }],
  );
  expect(ana.healthForm).toEqual({ at: "2026-09-01T18:02:00Z", reviewBy: "2027-09-01", speak: true });
});

test("of somebody erased nothing is left but that she was there (ROLL-22)", () => {
  const ana = told(
    ["2026-09-01T18:00:00Z", { kind: "met", contact }],
    ["2026-09-01T18:02:00Z", { kind: "consented", to: "photo", given: true, wording: "for the poster" }],
    ["2026-12-01T09:00:00Z", { kind: "erased" }],
  );
  expect(JSON.stringify(ana)).not.toMatch(/Brook|01632|example|poster/);
  expect(ana).toMatchObject({ erased: true, consents: {}, healthForm: null });
  // what was before it may be gone: the one event that is left says the same
  const rest = applyPerson(null, { kind: "erased" }, "2026-12-01T09:00:00Z");
  expect({ ...rest, since: ana.since }).toEqual(ana);
});

test("an accident record is written once, and added to (ROLL-23)", () => {
  const written = applyAccident(null, { kind: "written", facts }, "2026-12-01T19:50:00Z");
  const more = applyAccident(written, { kind: "added", text: "Hall told." }, "2026-12-02T09:00:00Z");
  expect(more.added).toEqual([{ text: "Hall told.", at: "2026-12-02T09:00:00Z" }]);
  expect(() => applyAccident(more, { kind: "written", facts }, "2026-12-02T10:00:00Z")).toThrow("locked");
});

const facts = {
  session: "tuesday.2026-12-01",
  person: "Ana Brook",
  contact: "01632 960100",
  ageBand: "18 to 64",
  at: "2026-12-01T19:10:00Z",
  place: "Tithe Barn Hall",
  activity: "standing on one leg",
  happened: "Slipped on a wet board by the door.",
  injury: "Sore wrist.",
  firstAid: "Cold pack.",
  by: "Oriel Tamsett",
  ambulance: false,
  witnesses: "Ben Ford",
  premises: "Water on the floor by the door.",
  told: "caretaker",
} as const;

function told(...events: readonly (readonly [string, PersonEvent])[]): PersonState {
  const [first, ...rest] = events;
  if (first === undefined) throw new Error("no events");
  return rest.reduce(
    (before, [at, event]) => applyPerson(before, event, at),
    applyPerson(null, first[1], first[0]),
  );
}
