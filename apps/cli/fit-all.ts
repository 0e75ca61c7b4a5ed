import { arrangements, arrangementWords, capacityCaution } from "#core/hall";
import { formatLength } from "#core/words";
import { arrangementsTable } from "./arrangements-table.ts";
import type { Answer } from "./command.ts";
import { capacityFor, endedSentences, type FitJob, type FitRow, fitRow, rowInMetres } from "./fit-one.ts";
import { progressLine } from "./progress-line.ts";
import type { World } from "./world.ts";

/** Every arrangement beside the others; the search for the most comes last, so that it may be stopped. */
export async function fitAll(job: FitJob, world: World): Promise<Answer> {
  const rows: FitRow[] = [];
  const line = progressLine(world);
  for (const arrangement of arrangements) {
    line.show(`Planning ${arrangement} …`);
    await world.pause();
    line.clear();
    rows.push(await fitRow(job, arrangement, world));
  }
  return { text: allText(job, rows), json: { arrangements: rows.map((row) => rowInMetres(job, row)) } };
}

function allText(job: FitJob, rows: readonly FitRow[]): string {
  const best = rows.reduce((most, row) => (row.count > most.count ? row : most));
  const told = [
    job.hall.name,
    capacityFor(job, best).sentence,
    ...(best.count === 0
      ? []
      : [`That is with mats ${arrangementWords[best.arrangement]}, the most of the five ways to lay them.`]),
    ...rows.flatMap(({ ended }) => endedSentences(ended, job.seconds)),
  ];
  return `${told.join("\n")}\n\n${arrangementsTable(rows)}\n${legend(job, rows)}\n${capacityCaution}\n`;
}

function legend({ wayWidth }: FitJob, rows: readonly FitRow[]): string {
  const [first] = rows;
  const width = formatLength(wayWidth, "metric");
  return [
    "at most: no plan of that kind has more; proven where the mats reach it.",
    rows.every((row) => row.sight !== null)
      ? "cannot see: mats from which the teacher is behind somebody within the nearer two rows."
      : "cannot see: mats from which the teacher is behind somebody; – where no place is drawn for her.",
    "beside, behind, nearest: the least between long sides, between head and foot, and between any two mats.",
    first?.way.ok === false
      ? `no way out: – ${first.way.problems.map((it) => `${it.says} ${it.next}`).join(" ")}`
      : `no way out: mats without a way ${width} wide to a door, past the others and what stands on the floor.`,
  ]
    .map((it) => `${it}\n`)
    .join("");
}
