import { dropOnDevice, keepOnDevice, keysOnDevice, readOnDevice } from "../drafts/on-device.ts";
import type { Measuring } from "./measuring.ts";

/* Halls that are being measured, on this device only: what becomes of them goes to the server as a hall. */
/* Where the device refuses, they are here for as long as the page lives. */
const unkept = new Map<string, Measuring>();
const keyOf = (practice: string, id: string) => `measuring/${practice}/${id}`;

/** False where the device refuses to keep it. */
export function keepMeasuring(practice: string, id: string, measuring: Measuring): boolean {
  const key = keyOf(practice, id);
  const kept = keepOnDevice(key, measuring);
  if (kept) unkept.delete(key);
  else unkept.set(key, measuring);
  return kept;
}

/** What was kept, null for nothing. */
export function keptMeasuring(practice: string, id: string): Measuring | null {
  const read = unkept.get(keyOf(practice, id)) ?? readOnDevice(keyOf(practice, id));
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- written by keepMeasuring
  return isMeasuring(read) ? (read as Measuring) : null;
}

export function dropMeasuring(practice: string, id: string): void {
  unkept.delete(keyOf(practice, id));
  dropOnDevice(keyOf(practice, id));
}

export type KeptMeasuring = { readonly id: string; readonly measuring: Measuring };

/** All that are kept for a practice, the last begun first. */
export function keptMeasurings(practice: string): readonly KeptMeasuring[] {
  const start = keyOf(practice, "");
  return keysOnDevice(start)
    .map((key) => key.slice(start.length))
    .flatMap((id) => {
      const measuring = keptMeasuring(practice, id);
      return measuring === null ? [] : [{ id, measuring }];
    })
    .sort((a, b) =>
      a.measuring.begun < b.measuring.begun ? 1 : a.measuring.begun > b.measuring.begun ? -1 : 0,
    );
}

function isMeasuring(it: unknown): boolean {
  return typeof it === "object" && it !== null && "way" in it && "tape" in it && "trace" in it;
}
