import {
  type Capacity,
  type CapacityLimits,
  capacityCaution,
  capacityOf,
  type HallDocument,
  hallDocumentSchema,
  hallFromDocument,
  type MatPlan,
  matPlan,
} from "#core/hall";
import { bad, good, metresFromMillimetres, problem, readDocument, type Result } from "#core/words";
import type { Answer, Command, Given } from "../command.ts";
import { nearest } from "../nearest.ts";
import { readCaps } from "../read-caps.ts";
import { readInput } from "../read-input.ts";
import { setOutInMetres } from "../set-out-in-metres.ts";
import type { World } from "../world.ts";

const arrangements = ["lines"];

export const fit: Command = {
  name: "fit",
  summary: "the most mats that a hall's floor takes, and where each goes",
  words: ["HALL.json"],
  options: {
    arrangement: { value: "lines", says: "how the mats stand; lines is the only one yet and the usual one" },
    "mats-owned": { value: "NUMBER", says: "mats that there are to lie on" },
    "own-cap": { value: "NUMBER", says: "the most you want" },
    "insurer-cap": { value: "NUMBER", says: "the most your insurer covers" },
  },
  details: `
HALL.json is a hall as hallful schema hall describes it, in metres; - reads
standard input. With --json the answer has the centre of each mat in metres and
the angle of its length from +x in degrees, the set-out in metres from the walls
it names, and the time the plan took in milliseconds.`,
  run: async (given, world) => {
    const caps = readFitOptions(given);
    if (!caps.ok) return caps;
    const [name = "-"] = given.words;
    const input = await readInput(name, world);
    if (!input.ok) return input;
    const read = readDocument(hallDocumentSchema, input.value);
    if (!read.ok) return read;
    return fitHall(read.value.value, read.value.unused, caps.value, world);
  },
};

/** Problems: "arrangement-unknown", "cap-unreadable". */
function readFitOptions(given: Given): Result<CapacityLimits> {
  const arrangement = given.values["arrangement"] ?? "lines";
  if (arrangements.includes(arrangement)) return readCaps(given);
  const near = nearest(arrangement, arrangements);
  const next = near === undefined ? "There is: lines." : `Did you mean ${near}?`;
  const says = `There is no arrangement “${arrangement.slice(0, 40)}”.`;
  return bad(problem("arrangement-unknown", "--arrangement", says, next));
}

function fitHall(
  document: HallDocument,
  unused: readonly string[],
  caps: CapacityLimits,
  world: World,
): Result<Answer> {
  const hall = hallFromDocument(document);
  if (!hall.ok) return hall;
  const started = world.clock();
  const plan = matPlan(hall.value);
  const ms = Math.round((world.clock() - started) * 1000) / 1000;
  const { postedCapacity, peopleNotOnMats } = hall.value;
  const capacity = capacityOf(plan, { postedCapacity, peopleNotOnMats, ...caps });
  return good({
    text: fitText(hall.value.name, plan, capacity),
    json: fitJson(plan, capacity, ms),
    unused,
  });
}

function fitJson(plan: MatPlan, capacity: Capacity, ms: number) {
  const { arrangement, count, bound, proven, axis, mats, setOut } = plan;
  return {
    arrangement,
    count,
    bound,
    proven,
    axis,
    mats: mats.map(({ centre: [x, y], angle }) => ({
      x: metresFromMillimetres(x),
      y: metresFromMillimetres(y),
      angle,
    })),
    capacity: capacity.capacity,
    limitedBy: capacity.limitedBy,
    setOut: setOutInMetres(setOut),
    ms,
  };
}

function fitText(name: string, plan: MatPlan, capacity: Capacity): string {
  const proof = plan.proven
    ? "No plan in straight lines has more."
    : `Not proven to be the most: at best ${plan.bound} could fit in straight lines.`;
  const steps = plan.setOut.sentences.map((it) => `  ${it}\n`).join("");
  const setOut = steps === "" ? "" : `\nSetting out, with a tape\n${steps}`;
  return `${name}
${capacity.sentence}
${proof}
${setOut}
${capacityCaution}
`;
}
