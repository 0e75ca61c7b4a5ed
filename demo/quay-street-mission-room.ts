import { type HallDocument, hallDocumentSchema } from "#core/hall";
import { doorSwing } from "./door-swing.ts";
import { rectangle } from "./rectangle.ts";

type Corner = [number, number];

/** Round the chimney breast in the west wall. */
const outline: Corner[] = [
  [0, 0],
  [6.1, 0],
  [6.1, 9.2],
  [0, 9.2],
  [0, 6.05],
  [0.45, 6.05],
  [0.45, 4.25],
  [0, 4.25],
];

/** Invented. A small room with a two-hour minimum, volume bands and a new rate from April. */
export const quayStreetMissionRoom: HallDocument = hallDocumentSchema.parse({
  format: "hallful/hall@1",
  name: "Quay Street Mission Room",
  address: "Quay Street, Marlsford",
  notes: "Polling station: closed on election Thursdays.",
  outline,
  fixtures: [{ label: "Cupboard", outline: rectangle(4.9, 8.6, 1.2, 0.6) }],
  keepClear: [
    doorSwing("Street door", [5.1, 0], [4.2, 0], [5.1, 0.9]),
    doorSwing("Kitchen", [0, 8.3], [0, 9.1], [0.8, 8.3]),
  ],
  teacher: { outline: rectangle(0, 7.2, 6.1, 2) },
  mat: { length: 1.73, width: 0.61 },
  gaps: { side: 0.3, end: 0.2, wall: 0.5 },
  axis: "auto",
  postedCapacity: 30,
  currency: "GBP",
  hire: {
    perHour: "11.50",
    minimumMinutes: 120,
    incrementMinutes: 60,
    setUpFactor: 0.5,
    bands: [
      { fromHoursPerYear: 50, factor: 0.9 },
      { fromHoursPerYear: 120, factor: 0.8 },
    ],
    hoursPerYear: 140,
    rates: [{ from: "2027-04-01", perHour: "12.50" }],
  },
});
