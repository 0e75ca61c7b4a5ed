import {
  type ArrangementRow,
  arrangementRow,
  arrangements,
  arrangementWords,
  type CapacityLimits,
  capacityCaution,
  capacityOf,
  type Hall,
} from "#core/hall";
import { arrangementsTable } from "./arrangements-table.ts";
import type { Answer } from "./command.ts";
import { endedSentences, timedPlan } from "./fit-one.ts";
import { judgedInMetres, layingInMetres, planInMetres } from "./plan-in-metres.ts";
import { progressLine } from "./progress-line.ts";
import type { Ended } from "./search-most.ts";
import type { World } from "./world.ts";

type Row = ArrangementRow & { readonly ms: number; readonly ended: Ended | null };

/** Every arrangement beside the others; the search for the most comes last, so that it may be stopped. */
export async function fitAll(
  hall: Hall,
  caps: CapacityLimits,
  seconds: number,
  world: World,
): Promise<Answer> {
  const rows: Row[] = [];
  const line = progressLine(world);
  for (const arrangement of arrangements) {
    line.show(`Planning ${arrangement} …`);
    await world.pause();
    line.clear();
    const { plan, ms, ended } = await timedPlan(hall, arrangement, seconds, world);
    rows.push({ ...arrangementRow(hall, plan), ms, ended });
  }
  return {
    text: allText(hall, caps, rows, seconds),
    json: { arrangements: rows.map((row) => rowJson(hall, caps, row)) },
  };
}

function capacityFor({ postedCapacity, peopleNotOnMats }: Hall, caps: CapacityLimits, row: Row) {
  return capacityOf(row, { postedCapacity, peopleNotOnMats, ...caps });
}

function rowJson(hall: Hall, caps: CapacityLimits, row: Row) {
  const { capacity, limitedBy } = capacityFor(hall, caps, row);
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

function allText(hall: Hall, caps: CapacityLimits, rows: readonly Row[], seconds: number): string {
  const best = rows.reduce((most, row) => (row.count > most.count ? row : most));
  const told = [
    hall.name,
    capacityFor(hall, caps, best).sentence,
    `That is with mats ${arrangementWords[best.arrangement]}, the most of the five ways to lay them.`,
    ...rows.flatMap(({ ended }) => endedSentences(ended, seconds)),
  ];
  return `${told.join("\n")}\n\n${arrangementsTable(rows)}\n${legend(rows)}\n${capacityCaution}\n`;
}

function legend(rows: readonly Row[]): string {
  const [first] = rows;
  return [
    "at most: no plan of that kind has more; proven where the mats reach it.",
    rows.every((row) => row.sight !== null)
      ? "cannot see: mats from which the teacher is behind somebody within the nearer two rows."
      : "cannot see: mats from which the teacher is behind somebody; – where no place is drawn for her.",
    "beside, behind, nearest: the least between long sides, between head and foot, and between any two mats.",
    first?.way.ok === false
      ? `no way out: – ${first.way.problems.map((it) => `${it.says} ${it.next}`).join(" ")}`
      : "no way out: mats without a way 0.90 m wide to a door, past the others and what stands on the floor.",
  ]
    .map((it) => `${it}\n`)
    .join("");
}
