import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { cedarFork, marlsford } from "#demo";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { inTerminal } from "./pretend-terminal.ts";

const demos = [marlsford, cedarFork];
const golden = join(import.meta.dirname, "golden");

describe.each(["hall", "evening", "pass", "compare", "price", "week", "year", "class", "practice"])(
  "the schema of a %s",
  (name) => {
    it("is draft 2020-12 with an id and a title, and describes itself", async () => {
      const schema = await published(name);
      expect(schema).toMatchObject({
        $schema: "https://json-schema.org/draft/2020-12/schema",
        $id: `urn:hallful:${name}:1`,
        title: `Hallful ${name}`,
        type: "object",
      });
      expect(new Ajv2020().validateSchema(schema)).toBe(true);
    });
  },
);

describe("the published schemas", () => {
  it("take every hall, class and practice of the demo", async () => {
    const hall = await validator("hall");
    const course = await validator("class");
    const practice = await validator("practice");
    for (const demo of demos) {
      expect(practice(demo.practice)).toBe(true);
      for (const it of demo.halls) expect([it.id, hall(it.document)]).toEqual([it.id, true]);
      for (const it of demo.classes) expect([it.id, course(it.document)]).toEqual([it.id, true]);
    }
  });

  it("take a hall and an evening that leave out what may be left out", async () => {
    expect((await validator("hall"))(document("loft.json"))).toBe(true);
    expect((await validator("evening"))(document("tuesday.json"))).toBe(true);
    expect((await validator("pass"))(document("pass-of-ten.json"))).toBe(true);
    expect((await validator("compare"))(document("halls.json"))).toBe(true);
    expect((await validator("price"))(document("prices.json"))).toBe(true);
    expect((await validator("week"))(document("week-marlsford.json"))).toBe(true);
    expect((await validator("year"))(document("year-marlsford.json"))).toBe(true);
    expect((await validator("year"))(document("year-cedar-fork.json"))).toBe(true);
  });

  it.each([
    ["hall", "mat-missing"],
    ["hall", "outline-as-text"],
    ["hall", "outline-corner-in-quotes"],
    ["hall", "outline-corner-with-three-numbers"],
    ["hall", "axis-in-words"],
    ["hall", "gap-null"],
    ["hall", "a-list"],
    ["evening", "hire-missing"],
    ["evening", "money-as-a-number"],
    ["evening", "minutes-in-words"],
    ["pass", "attendance-in-words"],
    ["pass", "attendance-missing"],
    ["pass", "live-price-as-a-number"],
    ["compare", "halls-as-a-name"],
    ["compare", "halls-missing"],
    ["compare", "by-the-moon"],
    ["price", "cost-missing"],
    ["price", "studio-pay-of-no-kind"],
    ["week", "contribution-as-a-number"],
    ["week", "kind-of-no-work"],
    ["week", "wish-of-no-kind"],
    ["year", "region-of-no-place"],
    ["year", "change-of-no-kind"],
    ["year", "minutes-in-words"],
  ])("of a %s refuses %s", async (name, ugly) => {
    const text = readFileSync(join(import.meta.dirname, "zoo", name, `${ugly}.json`), "utf8");
    expect((await validator(name))(JSON.parse(text))).toBe(false);
  });

  it("refuse nothing of the kind that is told and passed over, like a misspelt key", async () => {
    expect((await validator("hall"))(document("loft-with-typos.json"))).toBe(true);
  });

  it("of what Hallful takes as it is: every ugly hall that the schema refuses, Hallful refuses", async () => {
    const hall = await validator("hall");
    const folder = join(import.meta.dirname, "zoo", "hall");
    const refused = readdirSync(folder).filter((name) => {
      const [readable] = parsed(join(folder, name));
      return readable !== undefined && !hall(readable);
    });
    expect(refused.length).toBeGreaterThan(10);
    const seen = await Promise.all(refused.map((name) => inTerminal(["fit", name], { folder })));
    expect(seen.map((it) => it.code)).toEqual(refused.map(() => 2));
  });
});

async function published(name: string): Promise<object> {
  return z.looseObject({}).parse(JSON.parse((await inTerminal(["schema", name])).out));
}

async function validator(name: string) {
  return new Ajv2020({ strictTypes: false }).compile(await published(name));
}

function document(name: string): unknown {
  return JSON.parse(readFileSync(join(golden, name), "utf8"));
}

function parsed(file: string): readonly unknown[] {
  try {
    return [JSON.parse(readFileSync(file, "utf8"))];
  } catch {
    return [];
  }
}
