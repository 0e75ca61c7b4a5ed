import { type HallDocument, hallDocumentSchema } from "#core/hall";
import { doorSwing } from "./door-swing.ts";
import { rectangle } from "./rectangle.ts";

type Corner = [number, number];

/** An L, with a bay of three slanting sides in its west wall. */
const outline: Corner[] = [
  [0, 0],
  [14.2, 0],
  [14.2, 7.6],
  [8.4, 7.6],
  [8.4, 13.1],
  [0, 13.1],
  [0, 9.4],
  [-1.05, 8.5],
  [-1.05, 6.3],
  [0, 5.4],
];

/** Invented. The difficult floor: a wing, a bay, a stage, two pillars, three doors. A price per session. */
export const stBrannocsChurchHall: HallDocument = hallDocumentSchema.parse({
  format: "hallful/hall@1",
  name: "St Brannoc’s church hall",
  address: "Church Walk, Marlsford",
  notes: "No music after nine. Weddings have Saturdays from noon.",
  outline,
  fixtures: [
    { label: "Stage", outline: rectangle(11.4, 0, 2.8, 7.6) },
    { label: "North pillar", outline: rectangle(8.22, 7.42, 0.36, 0.36) },
    { label: "South pillar", outline: rectangle(8.22, 2.4, 0.36, 0.36) },
    { label: "Tables", outline: rectangle(0, 11.9, 2, 1.2), movable: true },
  ],
  keepClear: [
    doorSwing("West leaf", [3.3, 13.1], [4.1, 13.1], [3.3, 12.3]),
    doorSwing("East leaf", [4.9, 13.1], [4.1, 13.1], [4.9, 12.3]),
    doorSwing("Fire exit", [6.2, 0], [7.2, 0], [6.2, 1]),
    { label: "Way out", outline: rectangle(6, 0, 1.4, 1.2) },
  ],
  teacher: { outline: rectangle(0, 0, 5.8, 2.2) },
  mat: { length: 1.83, width: 0.61 },
  gaps: { side: 0.5, end: 0.3, wall: 0.5 },
  axis: "auto",
  postedCapacity: 90,
  currency: "GBP",
  hire: {
    perSession: "42.00",
    heating: { perHour: "4.50", months: [11, 12, 1, 2, 3] },
    weekendFactor: 1.2,
  },
});
