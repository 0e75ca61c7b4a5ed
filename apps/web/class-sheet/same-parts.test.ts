import { emptyClass } from "#core/class";
import { expect, test } from "vitest";
import type { ClassPart } from "./class-part.ts";
import { sameParts } from "./same-parts.ts";

const document = emptyClass({ practice: { currency: "GBP", locale: "en-GB" }, today: "2026-07-20" });
const before: ClassPart & { readonly shown: boolean } = { document, change: () => undefined, shown: true };

test("a part stays while its own parts of the class are the same objects", () => {
  const year = sameParts<typeof before>("year", "weekday");
  expect(year(before, { ...before, document: { ...document, heads: 9 } })).toBe(true);
  expect(year(before, { ...before, document: { ...document, weekday: 5 } })).toBe(false);
  expect(year(before, { ...before, document: { ...document, year: { ...document.year } } })).toBe(false);
});

test("a part is drawn again when anything else that it is given changes", () => {
  const year = sameParts<typeof before>("year");
  expect(year(before, { ...before, shown: false })).toBe(false);
  expect(year(before, { ...before, change: () => undefined })).toBe(false);
});
