import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { arrangements, floorToFill, readHall } from "#core/hall";
import { checkPlaced } from "#kernels/packing";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { inTerminal } from "./pretend-terminal.ts";

/** Halls that are ugly but sound, with the most mats that lines have in them; null where nobody has counted. */
const zoo = {
  // 7 m hold ⌊7.5 / 1.11⌋ = 6 or ⌊7.3 / 2.13⌋ = 3, 9 m ⌊9.3 / 2.13⌋ = 4 or ⌊9.5 / 1.11⌋ = 8: 24; turned by half a
  // degree 7 m lose 9 · sin 0.5° = 0.08 m, which costs neither
  "axis-turned-past-the-quarter": 24,
  "drum-of-five-hundred-walls": null,
  "fixture-poking-through-the-wall": null,
  "fixtures-that-overlap": null,
  // the row along the back takes 1 m off 9 m: 8 m deep hold ⌊8.3 / 2.13⌋ = 3 or ⌊8.5 / 1.11⌋ = 7: 3 · 7 = 21
  "fixtures-that-touch": 21,
  // 8 by 10 m: ⌊8 / 0.61⌋ = 13 by ⌊10 / 1.83⌋ = 5 is 65; ⌊8 / 1.83⌋ = 4 by ⌊10 / 0.61⌋ = 16 is 64
  "gaps-of-nothing": 65,
  "room-with-a-sliver": 24,
  "saw-of-five-hundred-teeth": null,
  "sliver-of-a-corridor": 0,
  "sliver-of-a-triangle": 0,
  "teacher-on-the-whole-floor": 0,
  "zones-that-leave-no-floor": 0,
} as const;

const folder = join(import.meta.dirname, "zoo", "sound-hall");
const answer = z.object({
  count: z.number(),
  bound: z.number(),
  mats: z.array(z.object({ x: z.number(), y: z.number(), angle: z.number() })),
});

it("every file of the zoo is in the list, and the other way round", () => {
  expect(readdirSync(folder).sort()).toEqual(Object.keys(zoo).map((name) => `${name}.json`));
});

describe.each(Object.entries(zoo))("%s", (name, lines) => {
  const text = readFileSync(join(folder, `${name}.json`), "utf8");
  const hall = readHall(JSON.parse(text));
  if (!hall.ok) throw new Error(`${name}: ${hall.problems.map((it) => it.code).join()}`);

  it.each(arrangements)(
    "has an allowed plan %s",
    async (arrangement) => {
      // a minute passes between two looks at the clock, so that a search ends after a step
      const words = ["fit", "-", "--arrangement", arrangement, "--json"];
      const seen = await inTerminal(words, { input: text, tick: 60_000 });
      expect(seen).toMatchObject({ code: 0, err: "" });
      const { count, bound, mats } = answer.parse(JSON.parse(seen.out));
      const placed = mats.map(({ x, y, angle }) => ({ centre: [x * 1000, y * 1000] as const, angle }));
      expect(placed).toHaveLength(count);
      expect(bound).toBeGreaterThanOrEqual(count);
      expect(checkPlaced(floorToFill(hall.value), hall.value.mat, hall.value.gaps, placed)).toEqual([]);
      if (arrangement === "lines" && lines !== null) expect(count).toBe(lines);
      // rings on a floor of five hundred walls take some seconds, more on a machine that others use
    },
    60_000,
  );
});
