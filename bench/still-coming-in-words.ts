import type { Machine } from "./machine.ts";
import type { ComingRecord, Spread } from "./still-coming-measure.ts";

type Whole = { readonly machine: Machine; readonly runs: number; readonly records: readonly ComingRecord[] };

export function comingInWords({ machine, runs, records }: Whole): string {
  return [
    `${machine.node}, ${machine.cores} cores, load ${machine.load}; medians of ${runs} runs, the slowest behind`,
    ...records.flatMap(linesOf),
  ].join("\n");
}

function linesOf({ people, visits, ms, parameters, logLikelihood, peer }: ComingRecord): readonly string[] {
  return [
    "",
    `${people} people, ${visits} visits`,
    `  BG/NBD fitted                     ${spread(ms.fitBgNbd)}`,
    `  the whole answer by BG/NBD        ${spread(ms.answerBgNbd)}`,
    `  the whole answer by BG/BB         ${spread(ms.answerBgBb)}`,
    `  a CSV file of them read           ${spread(ms.readFile)}`,
    `  ${four(parameters)}, ln L ${logLikelihood.toFixed(3)}`,
    ...(peer === null
      ? []
      : [
          `  plain climb, person by person     ${String(peer.ms).padStart(8)} ms, ${peer.looks} looks`,
          `  ${four(peer.parameters)}, ln L ${peer.logLikelihood.toFixed(3)}; the fit is ${peer.ahead.toExponential(1)} ahead`,
        ]),
  ];
}

function spread({ median, most }: Spread): string {
  return `${median.toFixed(1).padStart(8)} ms (${most.toFixed(1)} ms)`;
}

function four(parameters: Readonly<Record<string, number>>): string {
  return Object.entries(parameters)
    .map(([name, value]) => `${name} ${value.toPrecision(4)}`)
    .join(", ");
}
