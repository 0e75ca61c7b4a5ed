import { readTable } from "#adapters/import";
import { comingAnswer, staysAnswer, type Visit } from "#core/outlook";
import { readVisits, visitsShape } from "#core/table";
import { noneUsable } from "../import/taking-problems.ts";
import { chosenColumns, tableSeen } from "../import/table-ask.ts";
import type { RenewalsAnswer, VisitsAnswer, VisitsJob, VisitsStage } from "./visits-job.ts";

/** Who is still coming, from the bytes of a file of visits; `tell` hears what is being done. */
export function workOutVisits(
  { bytes, ask, choices, renewal }: VisitsJob,
  tell: (stage: VisitsStage) => void,
): VisitsAnswer {
  tell({ doing: "reading" });
  const file = readTable(bytes, ask.names);
  if (!file.ok) return { kind: "no table", problems: file.problems };
  const { table } = file.value;
  const seen = tableSeen(file.value, visitsShape, ask);
  tell({ doing: "sorting", rows: table.rows.length });
  const columns = chosenColumns(table, visitsShape, ask);
  if (!columns.ok) return { kind: "asks", seen, problems: columns.problems };
  const read = readVisits(table, columns.value, ask.order ?? undefined);
  if (!read.ok) return { kind: "asks", seen, problems: read.problems };
  const { visits, notUsed: left, dates, writtenTwoWays } = read.value;
  const words = { seen, visits: visits.length, left, dates, writtenTwoWays };
  if (visits.length === 0) return { kind: "not worked out", problems: [noneUsable(left.length)], ...words };
  tell({ doing: "working out", visits: visits.length });
  const answer = comingAnswer({ ...choices, visits });
  return answer.ok
    ? { kind: "ready", answer: answer.value, renewals: renewalsOf(visits, choices, renewal), ...words }
    : { kind: "not worked out", problems: answer.problems, ...words };
}

/** What cannot be told of renewals leaves the rest of the page as it is. */
function renewalsOf(
  visits: readonly Visit[],
  { notSeenFor: _weeks, model: _model, ahead: _ahead, ...records }: VisitsJob["choices"],
  renewal: VisitsJob["renewal"],
): RenewalsAnswer {
  const read = staysAnswer({ ...records, ...renewal, visits });
  return read.ok
    ? { kind: "ready", answer: read.value }
    : { kind: "not worked out", problems: read.problems };
}
