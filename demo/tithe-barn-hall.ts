import { type HallDocument, hallDocumentSchema } from "#core/hall";
import { doorSwing } from "./door-swing.ts";
import { rectangle } from "./rectangle.ts";

/** Invented. A plain village hall with a stage recess, a free set-up half hour and a winter charge. */
export const titheBarnHall: HallDocument = hallDocumentSchema.parse({
  format: "hallful/hall@1",
  name: "Tithe Barn Hall",
  address: "Barn Lane, Marlsford",
  notes: "Key from the caretaker next door. The heating wants half an hour.",
  outline: rectangle(0, 0, 8.2, 13.4),
  fixtures: [
    { label: "Chairs", outline: rectangle(0, 11.9, 1.4, 1.5), movable: true },
    { label: "Piano", outline: rectangle(6.6, 12.7, 1.6, 0.7), movable: true },
    { label: "Radiator", outline: rectangle(0, 4.1, 0.15, 2.4) },
  ],
  keepClear: [
    doorSwing("Main door", [3.6, 0], [4.6, 0], [3.6, 1]),
    { label: "Way out", outline: rectangle(7.1, 0, 1.1, 1.5) },
  ],
  teacher: { outline: rectangle(0, 11.2, 8.2, 2.2) },
  mat: { length: 1.83, width: 0.61 },
  gaps: { side: 0.5, end: 0.3, wall: 0.5 },
  axis: "auto",
  postedCapacity: 60,
  currency: "GBP",
  hire: {
    perHour: "14.00",
    minimumMinutes: 60,
    incrementMinutes: 30,
    freeBeforeMinutes: 15,
    freeAfterMinutes: 0,
    heating: { perHour: "3.00", months: [10, 11, 12, 1, 2, 3] },
    weekendFactor: 1.25,
    hoursPerYear: 80,
  },
});
