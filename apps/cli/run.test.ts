import { describe, expect, it } from "vitest";
import { z } from "zod";
import { inTerminal } from "./pretend-terminal.ts";

const hall = JSON.stringify({
  name: "Loft",
  outline: [
    [0, 0],
    [6, 0],
    [6, 5],
    [0, 5],
  ],
  mat: { length: 1.8, width: 0.6 },
  gaps: { side: 0.5, end: 0.3, wall: 0.4 },
});

const fitAnswer = z.object({
  count: z.number(),
  bound: z.number(),
  mats: z.array(z.object({ x: z.number(), y: z.number(), angle: z.number() })),
});

describe("what is written on the command line", () => {
  it.each([
    [["fitt", "hall.json"], "command-unknown", "Did you mean hallful fit?"],
    [["sing"], "command-unknown", "See hallful help for those there are."],
    [["help", "evning"], "command-unknown", "Did you mean hallful help evening?"],
    [["fit", "-", "--arangement", "lines"], "option-unknown", "Did you mean --arrangement?"],
    [["fit", "-", "--colour"], "option-unknown", "See hallful help fit for those there are."],
    [["fit", "-", "-x"], "option-unknown", "See hallful help fit for those there are."],
    [["fit", "-", "--arrangement"], "option-value-missing", "Write it like --arrangement lines."],
    [["fit", "-", "--json=yes"], "option-value-extra", "Write --json alone."],
    [["fit", "-", "--arrangement", "line"], "arrangement-unknown", "Did you mean lines?"],
    [["fit", "-", "--arrangement", "moust"], "arrangement-unknown", "Did you mean most?"],
    [
      ["fit", "-", "--arrangement", "pews"],
      "arrangement-unknown",
      "There are: lines, staggered, facing, round, most, all.",
    ],
    [["fit", "-", "--mats", "0"], "mats-unreadable", "Give a whole number from 1 to 9999."],
    [["fit", "-", "--mats", "4.5"], "mats-unreadable", "Give a whole number from 1 to 9999."],
    [["fit", "-", "--mats", "99"], "sight-plan-none", "draw where the teacher stands"],
    [["fit", "-", "--seconds", "0"], "seconds-unreadable", "Give seconds over 0, up to 3600."],
    [["fit", "-", "--own-cap", "-3"], "cap-unreadable", "Give a whole number from 0 to 9999."],
    [["fit"], "word-missing", "Write it like hallful fit HALL.json"],
    [["fit", "a.json", "b.json"], "word-extra", "Write it like hallful fit HALL.json"],
    [["schema", "hull"], "schema-unknown", "Did you mean hall?"],
    [["export", "holl", "x"], "kind-unknown", "Did you mean hall?"],
    [["fit", "nowhere.json"], "input-missing", "Look whether the name is right"],
    [["fit", "."], "input-missing", "Look whether the name is right"],
  ])("%j is told as %s", async (words, code, next) => {
    const seen = await inTerminal(words, { input: hall });
    expect(seen).toMatchObject({ code: 2, out: "" });
    expect(seen.err).toContain(`[${code}]`);
    expect(seen.err).toContain(next);
  });

  it("asks for JSON and gets its problems as JSON", async () => {
    const seen = await inTerminal(["fit", "nowhere.json", "--json"]);
    expect(JSON.parse(seen.err)).toEqual({
      problems: [
        {
          code: "input-missing",
          place: "nowhere.json",
          says: "The file nowhere.json does not exist.",
          next: "Look whether the name is right; - reads standard input.",
        },
      ],
    });
  });

  it("tells of a fault of ours as a problem, with exit 1 and no trace of its insides", async () => {
    const seen = await inTerminal(["fit", "-"], {
      input: () => Promise.reject(new Error("the cable is out")),
    });
    expect(seen.code).toBe(1);
    expect(seen.err).toBe(
      "Something went wrong in Hallful itself: the cable is out. " +
        "Nothing was saved. Tell us what you did and what stands here. [unexpected]\n",
    );
  });

  it("gives the version", async () => {
    expect(await inTerminal(["--version"])).toEqual({ code: 0, out: "1.2.3\n", err: "" });
  });

  it.each([["fit"], ["evening"], ["schema"], ["export"], ["import"], ["backup"], ["restore"], ["help"]])(
    "explains %s by help and by --help alike",
    async (name) => {
      const help = await inTerminal(["help", name]);
      expect(help).toMatchObject({ code: 0, err: "" });
      expect(help.out).toContain(`hallful ${name}`);
      expect(await inTerminal([name, "--help"])).toEqual(help);
    },
  );
});

describe("hallful fit", () => {
  it("reads standard input, and lines is what it does unless told", async () => {
    const told = await inTerminal(["fit", "-", "--arrangement", "lines", "--json"], { input: hall });
    const untold = await inTerminal(["fit", "-", "--json"], { input: hall });
    expect(untold).toEqual(told);
    expect(told.code).toBe(0);
  });

  it("answers with centres in metres inside the wall gap, as many as it counts", async () => {
    const seen = await inTerminal(["fit", "-", "--json"], { input: hall });
    const answer = fitAnswer.parse(JSON.parse(seen.out));
    // side by side along the 6 m wall: (6 − 2·0.4 + 0.5) / (0.6 + 0.5) = 5.18, so 5; deep: (5 − 0.8 + 0.3) / 2.1 = 2.14, so 2
    // the other way: (5 − 0.8 + 0.5) / 1.1 = 4.27, so 4; (6 − 0.8 + 0.3) / 2.1 = 2.6, so 2: fewer
    expect(answer.count).toBe(10);
    expect(answer.mats).toHaveLength(10);
    expect(answer.bound).toBeGreaterThanOrEqual(10);
    // upright mats: half a width and the gap from the left, half a length and the gap from below
    expect(answer.mats.every(({ x, y }) => x >= 0.7 && x <= 5.3 && y >= 1.3 && y <= 3.7)).toBe(true);
  });

  it("is limited by what is stated beside the floor", async () => {
    const seen = await inTerminal(["fit", "-", "--json", "--mats-owned", "8", "--insurer-cap", "8"], {
      input: hall,
    });
    expect(JSON.parse(seen.out)).toMatchObject({
      count: 10,
      capacity: 8,
      limitedBy: ["mats owned", "insurer"],
    });
  });

  it("takes a file that an editor began with a byte order mark", async () => {
    const seen = await inTerminal(["fit", "-", "--json"], { input: `\u{feff}${hall}` });
    expect(seen).toMatchObject({ code: 0, err: "" });
  });
});
