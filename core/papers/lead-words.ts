import { arrangementWords, capacityOf, proofSentence } from "#core/hall";
import type { HallSheetInput } from "./hall-sheet-types.ts";
import { saidLength } from "./said-length.ts";

/** The posted number first, then what is drawn and how good it is, then how many of the mats to lay where it is fewer. */
export function leadWords(input: HallSheetInput): readonly string[] {
  const { hall, plan, units } = input;
  const size = `${saidLength(hall.mat.length, units)} by ${saidLength(hall.mat.width, units)}`;
  const mats = plan.count === 1 ? `1 mat of ${size} is drawn` : `${plan.count} mats of ${size} are drawn`;
  const drawn =
    plan.count === 0 ? `No mat of ${size} is drawn` : `${mats}, ${arrangementWords[plan.arrangement]}`;
  return [postedWords(input), `${drawn}. ${proofSentence(plan)}`, ...fewerWords(input)];
}

function postedWords({ hall }: HallSheetInput): string {
  const { postedCapacity, peopleNotOnMats } = hall;
  if (postedCapacity === undefined)
    return "The hall’s posted number is not known: ask how many people may be in the room.";
  const onMats = Math.max(0, postedCapacity - peopleNotOnMats);
  return `The hall’s posted number is ${people(postedCapacity)}: ${onMats} on mats and ${peopleNotOnMats} beside them.`;
}

function fewerWords({ hall, plan, limits }: HallSheetInput): readonly string[] {
  const { postedCapacity, peopleNotOnMats } = hall;
  const { capacity, limitedBy } = capacityOf(plan, { postedCapacity, peopleNotOnMats, ...limits });
  if (capacity >= plan.count) return [];
  const reasons = listed(limitedBy.map((it) => reasonWords[it]));
  return [`Lay no more than ${capacity} of them: ${reasons} ${limitedBy.length === 1 ? "sets" : "set"} it.`];
}

const reasonWords = {
  floor: "the floor",
  "posted number": "the posted number",
  "mats owned": "the number of mats there are",
  "own cap": "the teacher’s own cap",
  insurer: "the insurer’s cap",
} as const;

function listed(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}

function people(count: number): string {
  return `${count} ${count === 1 ? "person" : "people"}`;
}
