import { type HallDocument, hallDocumentSchema, hallFromDocument } from "#core/hall";
import { readDocument, type Result } from "#core/words";
import type { Answer, Command } from "../command.ts";
import { fitAll } from "../fit-all.ts";
import { fitOne } from "../fit-one.ts";
import { fitSight } from "../fit-sight.ts";
import { type FitOptions, readFitOptions } from "../read-fit-options.ts";
import { readInput } from "../read-input.ts";
import type { World } from "../world.ts";

export const fit: Command = {
  name: "fit",
  summary: "the most mats that a hall's floor takes, and where each goes",
  words: ["HALL.json"],
  options: {
    arrangement: { value: "lines", says: "lines, staggered, facing, round, most, or all to compare them" },
    seconds: { value: "NUMBER", says: "how long to look for the most at most; 10 unless told" },
    mats: { value: "NUMBER", says: "lay so many, so that as few as can be found do not see the teacher" },
    "mats-owned": { value: "NUMBER", says: "mats that there are to lie on" },
    "own-cap": { value: "NUMBER", says: "the most you want" },
    "insurer-cap": { value: "NUMBER", says: "the most your insurer covers" },
  },
  details: `
HALL.json is a hall as hallful schema hall describes it, in metres; - reads
standard input. lines stand in straight lines, staggered in lines of which every
other one is shifted, facing in two banks with a clear middle, round in rings
with the feet to the teacher, most along the walls or across them wherever there
is room. most is searched until it is proven that no more fit, until the seconds
are over, or until Ctrl-C; the best plan so far is told in each case. --mats
looks for a plan with so many mats, of the arrangement told or of any. With
--json the answer has the centre of each mat in metres and the angle of its
length from +x in degrees, the set-out in metres from the walls it names, and
the time the plan took in milliseconds.`,
  run: async (given, world) => {
    const options = readFitOptions(given);
    if (!options.ok) return options;
    const [name = "-"] = given.words;
    const input = await readInput(name, world);
    if (!input.ok) return input;
    const read = readDocument(hallDocumentSchema, input.value);
    if (!read.ok) return read;
    return fitHall(read.value.value, read.value.unused, options.value, world);
  },
};

async function fitHall(
  document: HallDocument,
  unused: readonly string[],
  options: FitOptions,
  world: World,
): Promise<Result<Answer>> {
  const hall = hallFromDocument(document);
  if (!hall.ok) return hall;
  const { caps, seconds, mats } = options;
  if (mats !== undefined) {
    const only = options.arrangement === "all" ? undefined : options.arrangement;
    const seen = await fitSight(hall.value, mats, only, caps, world);
    return seen.ok ? { ok: true, value: { ...seen.value, unused } } : seen;
  }
  const arrangement = options.arrangement ?? document.arrangement ?? "lines";
  const answer =
    arrangement === "all"
      ? await fitAll(hall.value, caps, seconds, world)
      : await fitOne(hall.value, arrangement, caps, seconds, world);
  return { ok: true, value: { ...answer, unused } };
}
