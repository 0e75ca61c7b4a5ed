import * as fc from "fast-check";
import { expect, test } from "vitest";
import { z } from "zod";
import { readDocument } from "./read-document.ts";

const schema = z.object({
  name: z.string(),
  outline: z.array(z.tuple([z.number(), z.number()])),
  axis: z.union([z.number(), z.literal("auto")]).default("auto"),
  teacher: z.object({ wide: z.number() }).nullable().default(null),
  units: z.enum(["metric", "feet"]).optional(),
  mix: z.record(z.string(), z.number()).optional(),
});

const sound = { name: "Tithe Barn Hall", outline: [[0, 0]] };

function problemsOf(input: unknown) {
  const read = readDocument(schema, input);
  return read.ok ? [] : read.problems.map(({ code, place }) => `${code} at ${place}`);
}

test("a sound document is read, with the schema's defaults", () => {
  const read = readDocument(schema, sound);
  expect(read).toEqual({ ok: true, value: { value: { ...sound, axis: "auto", teacher: null }, unused: [] } });
});

test("a key that the schema does not know is listed with its place", () => {
  const read = readDocument(schema, { ...sound, postedCapcity: 60, teacher: { wide: 2, deeep: 2 } });
  expect(read.ok && read.value.unused).toEqual(["postedCapcity", "teacher.deeep"]);
});

test("the keys of a record are all known", () => {
  const read = readDocument(schema, { ...sound, mix: { "pass-10": 0.4, free: 0.6 } });
  expect(read.ok && read.value.unused).toEqual([]);
});

test("every problem is told, each at its place", () => {
  const input = {
    outline: [[0, 0], [1, "far"], [2]],
    axis: "east",
    units: "cubits",
    teacher: { wide: null },
  };
  expect(problemsOf(input)).toEqual([
    "document-missing at name",
    "document-wrong-kind at outline[1][1]",
    "document-length at outline[2]",
    "document-wrong-kind at axis",
    "document-wrong-kind at teacher.wide",
    "document-choice at units",
  ]);
});

test("NaN and the infinite are numbers that cannot be used, also where another kind is allowed", () => {
  expect(problemsOf({ ...sound, outline: [[Number.NaN, Number.POSITIVE_INFINITY]] })).toEqual([
    "document-not-a-number at outline[0][0]",
    "document-not-a-number at outline[0][1]",
  ]);
  expect(problemsOf({ ...sound, axis: Number.NaN })).toEqual(["document-not-a-number at axis"]);
});

test("the sentences are ours and say what to give", () => {
  const read = readDocument(schema, { ...sound, name: 7, axis: true });
  expect(!read.ok && read.problems).toEqual([
    { code: "document-wrong-kind", place: "name", says: "“name” is 7.", next: "Give text." },
    {
      code: "document-wrong-kind",
      place: "axis",
      says: "“axis” is true.",
      next: "Give a number or the text “auto”.",
    },
  ]);
});

test("something that is no document at all is told at the whole", () => {
  expect(problemsOf(3)).toEqual(["document-wrong-kind at "]);
  expect(problemsOf(undefined)).toEqual(["document-missing at "]);
  expect(problemsOf([])).toEqual(["document-wrong-kind at "]);
});

test("no input makes the reader throw", () => {
  fc.assert(
    fc.property(fc.anything(), (input) => {
      const read = readDocument(schema, input);
      expect(read.ok || read.problems.length > 0).toBe(true);
    }),
  );
});

test("no input of nearly the right shape makes the reader throw or answers without a place", () => {
  const nearly = fc.record({ name: fc.anything(), outline: fc.anything(), axis: fc.anything() });
  fc.assert(
    fc.property(nearly, (input) => {
      const read = readDocument(schema, input);
      if (!read.ok) for (const { place } of read.problems) expect(place).toMatch(/^(name|outline|axis)/);
    }),
  );
});

test("a word that chooses between shapes is told with every word there is", () => {
  const pay = z.discriminatedUnion("form", [
    z.object({ form: z.literal("flat"), pay: z.string() }),
    z.object({ form: z.enum(["per head", "tiered"]), perHead: z.string() }),
  ]);
  const told = (input: unknown) => {
    const read = readDocument(z.object({ pay }), input);
    return read.ok ? [] : read.problems.map(({ code, says, next }) => `${code}: ${says} ${next}`);
  };
  expect(told({ pay: { form: "hourly", pay: "30.00" } })).toEqual([
    "document-choice: “pay.form” is the text “hourly”. Give “flat”, “per head” or “tiered”.",
  ]);
  expect(told({ pay: { pay: "30.00" } })).toEqual([
    "document-missing: “pay.form” is missing. Add it: “flat”, “per head” or “tiered”.",
  ]);
});
