import {
  type ArrangedMatPlan,
  arrangedPlan,
  type Arrangement,
  type ArrangementRow,
  arrangementRow,
  type Capacity,
  type CapacityLimits,
  capacityCaution,
  capacityOf,
  type Hall,
  proofSentence,
  setOutInWords,
} from "#core/hall";
import type { Answer } from "./command.ts";
import { judgedInMetres, layingInMetres, planInMetres } from "./plan-in-metres.ts";
import { type Ended, searchMost } from "./search-most.ts";
import type { World } from "./world.ts";

/** What every way of fitting needs. */
export type FitJob = {
  readonly hall: Hall;
  /** of the ways to the doors, in millimetres */
  readonly wayWidth: number;
  readonly caps: CapacityLimits;
  /** that `most` may search */
  readonly seconds: number;
};

/** A plan with what there is to judge it by, and how it came about. */
export type FitRow = ArrangementRow & { readonly ms: number; readonly ended: Ended | null };

/** The plan of one arrangement, with what limits the number and how to lay it. */
export async function fitOne(job: FitJob, arrangement: Arrangement, world: World): Promise<Answer> {
  const row = await fitRow(job, arrangement, world);
  return { text: fitText(job, row), json: rowInMetres(job, row) };
}

/** Milliseconds of the plan alone, to the microsecond. */
export async function fitRow(job: FitJob, arrangement: Arrangement, world: World): Promise<FitRow> {
  const { hall, seconds, wayWidth } = job;
  const started = world.clock();
  const searched = arrangement === "most" ? await searchMost(hall, seconds, world) : null;
  const plan = searched?.plan ?? arrangedPlan(hall, arrangement);
  const ms = Math.round((world.clock() - started) * 1000) / 1000;
  return { ...arrangementRow(hall, plan, wayWidth), ms, ended: searched?.ended ?? null };
}

export function capacityFor({ hall, caps }: FitJob, plan: Parameters<typeof capacityOf>[0]): Capacity {
  const { postedCapacity, peopleNotOnMats } = hall;
  return capacityOf(plan, { postedCapacity, peopleNotOnMats, ...caps });
}

export function rowInMetres(job: FitJob, row: FitRow) {
  const { capacity, limitedBy } = capacityFor(job, row);
  return {
    ...planInMetres(row.plan),
    capacity,
    limitedBy,
    setOut: layingInMetres(row.plan),
    ...judgedInMetres(row),
    ...(row.ended === null ? {} : { ended: row.ended }),
    ms: row.ms,
  };
}

function fitText(job: FitJob, row: FitRow): string {
  const told = [
    job.hall.name,
    capacityFor(job, row).sentence,
    proofSentence(row.plan),
    ...endedSentences(row.ended, job.seconds),
    ...judgedSentences(row),
  ];
  const without = row.count === 0 && row.arrangement !== "lines";
  return `${told.join("\n")}\n${without ? "" : setOutText(row.plan)}\n${capacityCaution}\n`;
}

/** Under its own heading, with a line before it. */
export function setOutText(plan: ArrangedMatPlan): string {
  const steps = setOutInWords(plan).map((it) => `  ${it}\n`);
  return `\nSetting out, with a tape\n${steps.join("")}`;
}

/** Who sees, and which mats have no way out and what is in it; nothing where neither teacher nor door is drawn. */
function judgedSentences({ count, sight, way }: Omit<FitRow, "ended">): readonly string[] {
  if (count === 0) return [];
  const seen = sight === null ? [] : sight.sentences.slice(0, 1);
  if (!way.ok) return seen;
  const blocked = way.value.sentences.filter((it) => it.startsWith("In the way: "));
  return [...seen, ...way.value.sentences.slice(0, 1), ...blocked];
}

/** What is said of a search that did not come to a proof. */
export function endedSentences(ended: Ended | null, seconds: number): readonly string[] {
  if (ended === "interrupted") return ["The search was stopped; this is the best plan it had."];
  if (ended !== "time") return [];
  return [
    `The search was given ${seconds} s; with more --seconds it may find more, or prove that there is none.`,
  ];
}
