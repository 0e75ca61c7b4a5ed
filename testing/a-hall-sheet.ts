import { type Hall, matPlan } from "#core/hall";
import { hallSheet, type HallSheet, type HallSheetInput } from "#core/papers";

/** The hall sheet of a hall, its mats in lines and lengths in metres, with what the test says instead. */
export function aHallSheet(hall: Hall, instead: Partial<HallSheetInput> = {}): HallSheet {
  return hallSheet({
    hall,
    address: null,
    className: null,
    plan: instead.plan ?? matPlan(hall),
    limits: {},
    wayWidth: null,
    units: "metric",
    locale: "en-GB",
    madeOn: { iso: "2026-11-25", words: "25 November 2026" },
    madeFrom: "version 3 of its measures",
    ...instead,
  });
}
