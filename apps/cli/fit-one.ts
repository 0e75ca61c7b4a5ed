import {
  type ArrangedMatPlan,
  arrangedPlan,
  type Arrangement,
  type Capacity,
  type CapacityLimits,
  capacityCaution,
  capacityOf,
  type Hall,
  proofSentence,
  setOutInWords,
} from "#core/hall";
import type { Answer } from "./command.ts";
import { layingInMetres, planInMetres } from "./plan-in-metres.ts";
import { type Ended, searchMost } from "./search-most.ts";
import type { World } from "./world.ts";

type Timed = { readonly plan: ArrangedMatPlan; readonly ms: number; readonly ended: Ended | null };

/** The plan of one arrangement, with what limits the number and how to lay it. */
export async function fitOne(
  hall: Hall,
  arrangement: Arrangement,
  caps: CapacityLimits,
  seconds: number,
  world: World,
): Promise<Answer> {
  const timed = await timedPlan(hall, arrangement, seconds, world);
  const { postedCapacity, peopleNotOnMats } = hall;
  const capacity = capacityOf(timed.plan, { postedCapacity, peopleNotOnMats, ...caps });
  return { text: fitText(hall.name, timed, capacity, seconds), json: fitJson(timed, capacity) };
}

/** Milliseconds to the microsecond. */
export async function timedPlan(
  hall: Hall,
  arrangement: Arrangement,
  seconds: number,
  world: World,
): Promise<Timed> {
  const started = world.clock();
  const searched = arrangement === "most" ? await searchMost(hall, seconds, world) : null;
  const plan = searched?.plan ?? arrangedPlan(hall, arrangement);
  const ms = Math.round((world.clock() - started) * 1000) / 1000;
  return { plan, ms, ended: searched?.ended ?? null };
}

function fitJson({ plan, ms, ended }: Timed, { capacity, limitedBy }: Capacity) {
  return {
    ...planInMetres(plan),
    capacity,
    limitedBy,
    setOut: layingInMetres(plan),
    ...(ended === null ? {} : { ended }),
    ms,
  };
}

function fitText(name: string, { plan, ended }: Timed, capacity: Capacity, seconds: number): string {
  const steps = setOutInWords(plan)
    .map((it) => `  ${it}\n`)
    .join("");
  const setOut =
    plan.count === 0 && plan.arrangement !== "lines" ? "" : `\nSetting out, with a tape\n${steps}`;
  const told = [name, capacity.sentence, proofSentence(plan), ...endedSentences(ended, seconds)].join("\n");
  return `${told}\n${setOut}\n${capacityCaution}\n`;
}

/** What is said of a search that did not come to a proof. */
export function endedSentences(ended: Ended | null, seconds: number): readonly string[] {
  if (ended === "interrupted") return ["The search was stopped; this is the best plan it had."];
  if (ended !== "time") return [];
  return [
    `The search was given ${seconds} s; with more --seconds it may find more, or prove that there is none.`,
  ];
}
