import { readFileSync } from "node:fs";
import { arrangements } from "#core/hall";
import { aHallDocument } from "#testing";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { inTerminal } from "./pretend-terminal.ts";

/** A drum of 24 walls, 11 m across: no search proves the most of it in any time that a test has. */
const input = JSON.stringify(
  aHallDocument({
    outline: Array.from({ length: 24 }, (_, wall): [number, number] => {
      const angle = (wall * Math.PI) / 12;
      return [Math.round(5500 * Math.cos(angle)) / 1000, Math.round(5500 * Math.sin(angle)) / 1000];
    }),
    axis: 0,
  }),
);

const answer = z.object({
  arrangement: z.string(),
  count: z.number(),
  bound: z.number(),
  proven: z.boolean(),
  mats: z.array(z.object({ x: z.number(), y: z.number(), angle: z.number() })),
  capacity: z.number(),
  ended: z.enum(["proven", "time", "interrupted"]).optional(),
});
const comparison = z.object({
  arrangements: z.array(
    answer.extend({
      cannotSee: z.array(z.number()).nullable(),
      leastGaps: z.object({
        side: z.number().nullable(),
        end: z.number().nullable(),
        any: z.number().nullable(),
      }),
      noWayOut: z.array(z.number()).nullable(),
      sentences: z.array(z.string()),
    }),
  ),
});

const most = ["fit", "-", "--arrangement", "most"];

describe("a search for the most", () => {
  it("ends when its seconds are over and says so", async () => {
    const seen = await inTerminal([...most, "--seconds", "2"], { input, tick: 100 });
    expect(seen).toMatchObject({ code: 0, err: "" });
    expect(seen.out).toContain("The search was given 2 s; with more --seconds it may find more, or prove");
    expect(seen.out).toContain("Setting out, with a tape");
  });

  it("keeps its best plan when it is stopped by Ctrl-C, in words and as JSON", async () => {
    const stopped = { input, tick: 60, interruptAt: 1 };
    const words = await inTerminal([...most, "--seconds", "3600"], stopped);
    expect(words).toMatchObject({ code: 0, err: "" });
    expect(words.out).toContain("The search was stopped; this is the best plan it had.");
    const json = await inTerminal([...most, "--seconds", "3600", "--json"], stopped);
    const told = answer.parse(JSON.parse(json.out));
    expect(told.ended).toBe("interrupted");
    // the square inside the disc of 5 m that is left has 7.07 m a side: ⌊7.37 / 2.13⌋ = 3 lines of
    // ⌊7.57 / 1.11⌋ = 6 are 18 at least
    expect(told.count).toBeGreaterThanOrEqual(18);
    expect(told.mats).toHaveLength(told.count);
  });

  it("shows how far it is where somebody watches, and leaves nothing of it behind", async () => {
    const seen = await inTerminal([...most, "--seconds", "3600"], {
      input,
      tick: 60,
      interruptAt: 2,
      watched: 100,
    });
    expect(seen.err).toMatch(
      /^\r\d+ mats so far, and no more than \d+ can fit\. \d+ s; Ctrl-C stops and keeps this\. Look/,
    );
    // no line is as long as the terminal is wide, or the next would not lie over it
    for (const line of seen.err.split("\r")) expect(line.length).toBeLessThan(100);
    expect(seen.err).toMatch(/\r *\r$/);
  });
});

describe("all arrangements", () => {
  it("are compared in one answer, each as full as if asked for alone", async () => {
    const room = readFileSync(new URL("golden/mission-room.json", import.meta.url), "utf8");
    const seen = await inTerminal(["fit", "-", "--arrangement", "all", "--json"], {
      input: room,
      tick: 60,
      interruptAt: 8,
    });
    const { arrangements: told } = comparison.parse(JSON.parse(seen.out));
    expect(told.map((it) => it.arrangement)).toEqual([...arrangements]);
    for (const each of told) {
      expect(each.mats).toHaveLength(each.count);
      expect(each.bound).toBeGreaterThanOrEqual(each.count);
      expect(each.sentences).toHaveLength(4);
    }
    const lines = answer.parse(JSON.parse((await inTerminal(["fit", "-", "--json"], { input: room })).out));
    expect(told[0]).toMatchObject(lines);
  });

  it("have the mats of an axis that is no number told, not planned", async () => {
    const text = readFileSync(new URL("zoo/hall/not-a-number.json", import.meta.url), "utf8");
    const seen = await inTerminal(["fit", "-", "--arrangement", "all"], { input: text });
    expect(seen).toMatchObject({ code: 2, out: "" });
  });
});

describe("what the hall's document says", () => {
  const room = JSON.parse(readFileSync(new URL("golden/mission-room.json", import.meta.url), "utf8"));
  const told = async (instead: object, ...words: readonly string[]) =>
    (await inTerminal(["fit", "-", ...words], { input: JSON.stringify({ ...room, ...instead }) })).out;

  it("is how the mats are laid where the command says nothing else", async () => {
    expect(await told({ arrangement: "facing" })).toContain(
      "No plan in two banks that face a clear middle has more.",
    );
    expect(await told({ arrangement: "facing" }, "--arrangement", "lines")).toContain(
      "No plan in straight lines has more.",
    );
  });

  it("is how wide the ways are, and how the length has to lie", async () => {
    expect(await told({ wayWidth: 1.2 })).toContain("way 1.20 m wide to a door");
    expect(await told({ lengthAlong: 0 })).toContain("Every mat lies with its length left to right.");
    expect(await told({ lengthAlong: 90 })).toContain("Every mat lies with its length front to back.");
  });
});

describe("so many mats", () => {
  const room = readFileSync(new URL("golden/mission-room.json", import.meta.url), "utf8");
  const words = ["fit", "-", "--arrangement", "lines", "--mats", "14"];

  it("are laid so that fewer are hidden than in the plan of as many as fit", async () => {
    const told = z
      .object({
        count: z.number(),
        cannotSee: z.array(z.number()),
        tried: z.number(),
        of: z.number(),
        exact: z.boolean(),
      })
      .parse(JSON.parse((await inTerminal([...words, "--json"], { input: room })).out));
    // 5 of the 14 that fit, as the comparison of the arrangements counts
    expect(told.count).toBe(14);
    expect(told.cannotSee.length).toBeLessThan(5);
    expect(told.tried).toBe(told.of);
    expect(told.exact).toBe(true);
  });

  it("keep the best so far when the search is stopped", async () => {
    const seen = await inTerminal(words, { input: room, interruptAt: 2, watched: 100 });
    expect(seen.code).toBe(0);
    expect(seen.out).toContain("The search was stopped before all plans were tried.");
    expect(seen.err).toMatch(/^\rPlan 1 of \d+: \d+ cannot see so far\. Ctrl-C stops and keeps this\./);
    expect(seen.err).toMatch(/\r *\r$/);
  });
});

describe("seconds", () => {
  it.each(["0", "-1", "NaN", "ten", "3601", "1e3", ""])("of “%s” are told to be none", async (seconds) => {
    const seen = await inTerminal(["fit", "-", `--seconds=${seconds}`], { input });
    expect(seen).toMatchObject({ code: 2, out: "" });
    expect(seen.err).toContain("[seconds-unreadable]");
  });
});
