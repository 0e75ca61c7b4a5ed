import { expect, test } from "vitest";
import { EMPTY_CONTACT } from "./contact-draft.ts";
import { found } from "./found.ts";
import type { PersonHere } from "./record-reads.ts";

const people = [
  here("zoe", { name: "Zoë Marl", phone: "01632 960 112" }),
  here("ana", { name: "Ana Brook", email: "ana@marlsford.example" }),
];

test("a search needs no accents, takes parts of words in any order, and nothing finds everybody", () => {
  expect(ids("zoe")).toEqual(["zoe"]);
  expect(ids("brook an")).toEqual(["ana"]);
  expect(ids("marlsford.ex")).toEqual(["ana"]);
  expect(ids("  ")).toEqual(["zoe", "ana"]);
  expect(ids("nell")).toEqual([]);
});

test("a phone number is found however its figures are spaced", () => {
  expect(ids("01632960112")).toEqual(["zoe"]);
  expect(ids("960-112")).toEqual(["zoe"]);
});

function ids(search: string): readonly string[] {
  return found(people, search).map(({ id }) => id);
}

function here(id: string, contact: Partial<typeof EMPTY_CONTACT>): PersonHere {
  const person = {
    contact: { ...EMPTY_CONTACT, ...contact },
    since: "2026-09-01T18:00:00Z",
    consents: {},
    healthForm: null,
    late: { times: 0, waived: 0 },
    mayCover: null,
    erased: false,
  };
  return { id, person };
}
