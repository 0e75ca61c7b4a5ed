import { readTable } from "#adapters/import";
import { comingAnswer, type Visit } from "#core/outlook";
import { chooseColumns, readVisits, visitsShape } from "#core/table";
import { type BgNbd, bgNbdLogLikelihood, fitBgNbd, type Repeats } from "#kernels/survival";
import type { ComingPerson } from "#testing";
import { plainFit } from "./still-coming-peer.ts";

export type ComingRecord = {
  readonly people: number;
  readonly visits: number;
  /** the median of the runs, and the slowest */
  readonly ms: {
    readonly fitBgNbd: Spread;
    /** everybody's chances and bands, who has not been seen and the curve of newcomers, with the fit */
    readonly answerBgNbd: Spread;
    readonly answerBgBb: Spread;
    /** bytes of a CSV file to visits */
    readonly readFile: Spread;
  };
  readonly parameters: BgNbd;
  readonly logLikelihood: number;
  readonly peer: {
    readonly ms: number;
    readonly looks: number;
    readonly parameters: BgNbd;
    readonly logLikelihood: number;
    /** how much likelier the fit is than the peer's, in ln L */
    readonly ahead: number;
    /** how far our ln L at the peer's parameters is from the peer's own */
    readonly apart: number;
  } | null;
};

export type Spread = { readonly median: number; readonly most: number };

const UNTIL = 272;

export function measureComing(
  people: readonly ComingPerson[],
  runs: number,
  withPeer: boolean,
): ComingRecord {
  const seen = people.map(repeatsOf);
  const visits = people.flatMap(visitsOf);
  const until = dayText(UNTIL);
  const bytes = new TextEncoder().encode(
    `Name,Date\n${visits.map((it) => `${it.person},${it.date}`).join("\n")}\n`,
  );
  const fit = fitBgNbd(seen);
  return {
    people: people.length,
    visits: visits.length,
    ms: {
      fitBgNbd: timed(runs, () => fitBgNbd(seen)),
      answerBgNbd: timed(runs, () => comingAnswer({ visits, until, model: "bg-nbd" })),
      answerBgBb: timed(runs, () => comingAnswer({ visits, until, model: "bg-bb" })),
      readFile: timed(runs, () => readVisitsIn(bytes)),
    },
    parameters: fit.parameters,
    logLikelihood: fit.logLikelihood,
    peer: withPeer ? peerOf(seen, fit.logLikelihood) : null,
  };
}

function peerOf(seen: readonly Repeats[], logLikelihood: number): NonNullable<ComingRecord["peer"]> {
  const started = performance.now();
  const peer = plainFit(seen);
  const ms = performance.now() - started;
  return {
    ms: Math.round(ms),
    ...peer,
    ahead: logLikelihood - peer.logLikelihood,
    apart: Math.abs(bgNbdLogLikelihood(peer.parameters, seen) - peer.logLikelihood),
  };
}

function readVisitsIn(bytes: Uint8Array): void {
  const file = readTable(bytes);
  if (!file.ok) throw new Error(JSON.stringify(file.problems));
  const columns = chooseColumns(file.value.table, visitsShape);
  if (!columns.ok) throw new Error(JSON.stringify(columns.problems));
  readVisits(file.value.table, columns.value);
}

function repeatsOf({ firstDay, days }: ComingPerson): Repeats {
  const last = days.at(-1) ?? firstDay;
  return { repeats: days.length, last: (last - firstDay) / 7, span: (UNTIL - firstDay) / 7 };
}

function visitsOf({ firstDay, days }: ComingPerson, at: number): readonly Visit[] {
  return [firstDay, ...days].map((day) => ({ person: `Person ${at}`, date: dayText(day) }));
}

function dayText(day: number): string {
  return new Date(Date.UTC(1997, 0, 1 + day)).toISOString().slice(0, 10);
}

function timed(runs: number, work: () => unknown): Spread {
  const times = Array.from({ length: runs }, () => {
    const started = performance.now();
    work();
    return performance.now() - started;
  }).sort((a, b) => a - b);
  return { median: tenth(times[Math.floor(runs / 2)] ?? 0), most: tenth(times.at(-1) ?? 0) };
}

function tenth(ms: number): number {
  return Math.round(ms * 10) / 10;
}
