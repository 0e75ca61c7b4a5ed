import { expect, test } from "vitest";
import { contactSlips, EMPTY_CONTACT } from "./contact-draft.ts";

test("a name alone is enough, and no name is told at the name", () => {
  expect(contactSlips({ ...EMPTY_CONTACT, name: "Ana Brook" })).toEqual({});
  expect(contactSlips({ ...EMPTY_CONTACT, name: "  " })).toEqual({
    name: "There is no name here. Write what this person is called.",
  });
});

test("what cannot be rung or written to is told at its field", () => {
  const slips = contactSlips({ ...EMPTY_CONTACT, name: "Ana", phone: "at home", email: "ana.example" });
  expect(slips.phone).toBe("“at home” is not a number to ring. Write its figures.");
  expect(slips.email).toContain("“ana.example” is not an address for email.");
  expect(contactSlips({ ...EMPTY_CONTACT, name: "Ana", phone: "(312) 555-0142" })).toEqual({});
});
