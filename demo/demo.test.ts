import { checkClass, checkHall, readPractice } from "#app/actions";
import { type ClassDocument, classYear } from "#core/class";
import { readSessions } from "#core/outlook";
import { type CurrencyCode, isCurrency } from "#core/words";
import { describe, expect, it } from "vitest";
import { cedarFork } from "./cedar-fork.ts";
import { marlsford } from "./marlsford.ts";

const demos = { marlsford, cedarFork };

describe.each(Object.entries(demos))("the demo %s", (_name, demo) => {
  const { currency } = demo.practice;
  if (!isCurrency(currency)) throw new Error(currency);

  it("has a sound practice", () => {
    expect(readPractice(demo.practice)).toMatchObject({ ok: true });
  });

  it.each(demo.halls.map((it) => [it.id, it.document] as const))("has %s as a sound hall", (_id, hall) => {
    expect(checkHall(hall, currency)).toEqual({ ok: true, value: { value: hall, unused: [] } });
  });

  it.each(demo.classes.map((it) => [it.id, it.document] as const))("has %s as a sound class", (_id, it) => {
    expect(checkClass(it, currency)).toEqual({ ok: true, value: { value: it, unused: [] } });
  });

  it("has what happened only for its classes, and all of it sound", () => {
    const classes = new Set(demo.classes.map((it) => it.id));
    expect(demo.happened.filter((it) => !classes.has(it.id))).toEqual([]);
    expect(demo.happened.map((it) => readSessions(it.document).ok)).toEqual(demo.happened.map(() => true));
  });

  it("has every class in one of its halls, whose hire is in its currency", () => {
    const halls = new Map(demo.halls.map((it) => [it.id, it.document.currency]));
    expect(demo.classes.map((it) => halls.get(it.document.hall ?? ""))).toEqual(
      demo.classes.map(() => currency),
    );
  });
});

describe("a year of the demo", () => {
  it("has 39 Tuesdays in Marlsford: 46 from 8 September to 20 July, 7 of them closed", () => {
    // closed: 27 Oct, 22 and 29 Dec, 16 Feb, 30 Mar, 6 Apr, 1 Jun
    expect(sessionsOf("tuesday-evening")).toBe(39);
  });

  it("has 38 Thursdays: 46 from 10 September to 22 July, 8 closed, polling day among them", () => {
    // closed: 29 Oct, 24 and 31 Dec, 18 Feb, 1 and 8 Apr, 6 May, 3 Jun
    expect(sessionsOf("thursday-beginners")).toBe(38);
  });
});

function sessionsOf(id: string): number {
  const it = marlsford.classes.find((one) => one.id === id)?.document;
  if (it === undefined) throw new RangeError(id);
  const year = classYear(it, hireOf(it), gbp());
  if (!year.ok) throw new Error(JSON.stringify(year.problems));
  return year.value.dates.length;
}

function hireOf(it: ClassDocument) {
  const hire = marlsford.halls.find((one) => one.id === it.hall)?.document.hire;
  if (hire === undefined) throw new RangeError(String(it.hall));
  return hire;
}

function gbp(): CurrencyCode {
  const code = "GBP";
  if (!isCurrency(code)) throw new RangeError(code);
  return code;
}
