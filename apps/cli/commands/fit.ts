import { type HallDocument, hallDocumentSchema, hallFromDocument, USUAL_WAY } from "#core/hall";
import { good, millimetresFromMetres, readDocument, type Result } from "#core/words";
import type { Answer, Command } from "../command.ts";
import { fitAll } from "../fit-all.ts";
import { type FitJob, fitOne } from "../fit-one.ts";
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
  const { wayWidth } = document;
  const job = {
    hall: hall.value,
    wayWidth: wayWidth === undefined ? USUAL_WAY : millimetresFromMetres(wayWidth),
    caps: options.caps,
    seconds: options.seconds,
  };
  const answer = await fitted(job, document, options, world);
  return answer.ok ? { ok: true, value: { ...answer.value, unused } } : answer;
}

async function fitted(
  job: FitJob,
  document: HallDocument,
  { arrangement, mats }: FitOptions,
  world: World,
): Promise<Result<Answer>> {
  if (mats !== undefined) return fitSight(job, mats, arrangement === "all" ? undefined : arrangement, world);
  if (arrangement === "all") return good(await fitAll(job, world));
  return good(await fitOne(job, arrangement ?? document.arrangement ?? "lines", world));
}
