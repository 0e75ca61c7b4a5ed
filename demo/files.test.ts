import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readTable } from "#adapters/import";
import { eveningOf } from "#core/class";
import { compareAnswer, evening, passAnswer, priceAnswer } from "#core/price";
import { chooseColumns, readVisits, visitsShape } from "#core/table";
import { describe, expect, it } from "vitest";
import { cedarFork } from "./cedar-fork.ts";
import { marlsford } from "./marlsford.ts";
import { tuesdayHappened } from "./marlsford-happened.ts";

const folder = join(import.meta.dirname, "files");
const demos = [marlsford, cedarFork];

/** An ordinary week of November: Monday the 9th is weekday 1. */
const dateOf = (weekday: number): string => `2026-11-${String(8 + weekday).padStart(2, "0")}`;

const halls = demos.flatMap((demo) => demo.halls.map((it) => [it.id, it.document] as const));
const evenings = demos.flatMap((demo) =>
  demo.classes.map((it) => {
    const hall = demo.halls.find((one) => one.id === it.document.hall);
    if (hall === undefined) throw new RangeError(it.id);
    const { currency } = demo.practice;
    const made = eveningOf(it.document, hall.document, currency, dateOf(it.document.weekday));
    return [it.id, made.ok ? made.value : made.problems] as const;
  }),
);

function file(id: string): unknown {
  return JSON.parse(readFileSync(join(folder, `${id}.json`), "utf8"));
}

describe("the demo as files for the command line", () => {
  it.each([...halls, ...evenings])("has %s as it is in the demo", (id, document) => {
    expect(file(id)).toEqual(document);
  });

  it.each(evenings)("has %s as an evening that can be answered", (_id, document) => {
    expect(evening(document)).toMatchObject({ ok: true });
  });

  it("has a pass, a comparison and prices that can be answered, with the prices and dates of the demo", () => {
    const [tuesday] = marlsford.classes.map((it) => it.document);
    const pass = file("pass-of-ten");
    const halls = file("halls-for-tuesday");
    const prices = file("prices-for-tuesday");
    expect(priceAnswer(prices)).toMatchObject({ ok: true, value: { unused: [] } });
    expect(prices).toMatchObject({ prices: tuesday?.prices, mix: tuesday?.mix, heads: tuesday?.heads });
    expect(passAnswer(pass)).toMatchObject({ ok: true, value: { unused: [] } });
    expect(compareAnswer(halls)).toMatchObject({ ok: true, value: { unused: [] } });
    expect(halls).toMatchObject({ prices: tuesday?.prices, mix: tuesday?.mix, heads: tuesday?.heads });
    expect(pass).toMatchObject({ calendar: { closures: tuesday?.year.closures } });
  });

  it("has visits to the Tuesday class that are as many, and as many for the first time, as in its record", () => {
    const read = readTable(readFileSync(join(folder, "tuesday-visits.csv")));
    const columns = read.ok ? chooseColumns(read.value.table, visitsShape) : read;
    const found = read.ok && columns.ok ? readVisits(read.value.table, columns.value) : columns;
    if (!found.ok || !("visits" in found.value)) throw new Error(JSON.stringify(found));
    const { visits, notUsed } = found.value;
    expect(notUsed).toEqual([]);
    const seen = new Set<string>();
    const sessions = [...new Set(visits.map(({ date }) => date))].map((date) => {
      const there = visits.filter((it) => it.date === date).map(({ person }) => person);
      const newcomers = there.filter((person) => !seen.has(person)).length;
      for (const person of there) seen.add(person);
      return { date, heads: there.length, newcomers };
    });
    const held = tuesdayHappened.sessions.map(({ date, heads, newcomers }) => ({ date, heads, newcomers }));
    expect(sessions).toEqual(held);
  });

  it("holds nothing else", () => {
    const others = ["oriels-week", "oriels-year", "pass-of-ten", "halls-for-tuesday", "prices-for-tuesday"];
    const documents = [...[...halls, ...evenings].map(([id]) => id), ...others].map((id) => `${id}.json`);
    expect(readdirSync(folder).sort()).toEqual([...documents, "tuesday-visits.csv"].sort());
  });
});
