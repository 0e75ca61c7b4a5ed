import {
  type ArrangedMatPlan,
  arrangedPlan,
  type Arrangement,
  type ArrangementRow,
  arrangementRow,
  arrangements,
  type Hall,
} from "#core/hall";
import type { LengthUnits } from "#core/words";
import { serveSteps } from "./serve-steps.ts";
import type { StepsRequest } from "./steps-messages.ts";

export type ArrangementsJob = {
  readonly hall: Hall;
  /** the plan that there is already */
  readonly plan: ArrangedMatPlan;
  /** millimetres */
  readonly wayWidth: number;
  readonly units: LengthUnits;
};

/** As far as the search for the most is taken to be compared: a second or two. Laid so, it goes on. */
const STEPS = 80;

const serve = serveSteps<ArrangementsJob, ArrangementRow>((job) => ({
  total: arrangements.length,
  notes: [],
  items: rowsOf(job),
}));

/** Rows of the floor last asked about: another choice, or a search that betters one plan, lays no other again. */
let known: { readonly key: string; readonly rows: ReadonlyMap<Arrangement, ArrangementRow> } = {
  key: "",
  rows: new Map(),
};

function* rowsOf(job: ArrangementsJob): Generator<ArrangementRow, void, undefined> {
  const key = JSON.stringify([job.hall, job.wayWidth, job.units]);
  if (known.key !== key) known = { key, rows: new Map() };
  for (const arrangement of arrangements) {
    const row = rowOf(job, arrangement, known.rows.get(arrangement));
    known = { key, rows: new Map(known.rows).set(arrangement, row) };
    yield row;
  }
}

function rowOf(
  { hall, plan, wayWidth, units }: ArrangementsJob,
  arrangement: Arrangement,
  before: ArrangementRow | undefined,
): ArrangementRow {
  if (plan.arrangement === arrangement && !isAsGood(before, plan))
    return arrangementRow(hall, plan, wayWidth, units);
  return before ?? arrangementRow(hall, arrangedPlan(hall, arrangement, { steps: STEPS }), wayWidth, units);
}

function isAsGood(row: ArrangementRow | undefined, { count, bound }: ArrangedMatPlan): boolean {
  return row !== undefined && row.count >= count && row.bound <= bound;
}

addEventListener("message", ({ data }: MessageEvent<StepsRequest<ArrangementsJob>>) => {
  const reply = serve(data);
  if (reply !== null) postMessage(reply);
});
