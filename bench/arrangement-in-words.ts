import type { ArrangementRecord } from "./arrangement-measure.ts";

export type HallArrangements = { readonly hall: string; readonly arrangements: readonly ArrangementRecord[] };

export function arrangementsInWords(halls: readonly HallArrangements[]): string {
  return [
    "hall                     arrangement  mats  bound           to best    to proof   memory   whole model: mats  bound      time",
    ...halls.flatMap(({ hall, arrangements }) => arrangements.map((each) => lineOf(hall, each))),
  ].join("\n");
}

function lineOf(hall: string, each: ArrangementRecord): string {
  const { peer } = each;
  const whole =
    each.arrangement !== "most"
      ? ""
      : peer === null
        ? "   too large"
        : `${peer.count ?? "none"}`.padStart(12) +
          `${peer.bound ?? "none"}`.padStart(10) +
          `${peer.ms} ms`.padStart(13);
  return [
    hall.padEnd(25),
    each.arrangement.padEnd(11),
    String(each.count).padStart(6),
    `${each.bound}${each.proven ? " proven" : ""}`.padStart(12),
    `${each.msToBest} ms`.padStart(14),
    (each.msToProof === null ? "-" : `${each.msToProof} ms`).padStart(12),
    `${each.peakMb} MB`.padStart(9),
    whole,
  ].join("");
}
