import { type HallDocument, hallDocumentSchema } from "#core/hall";
import { doorSwing } from "./door-swing.ts";
import { rectangle } from "./rectangle.ts";

/** Invented. 30 ft by 48 ft, written in metres: a foot is 0.3048 m. A 6 ft by 2 ft mat. */
export const grangeHall: HallDocument = hallDocumentSchema.parse({
  format: "hallful/hall@1",
  name: "Grange Hall",
  address: "County Road 9, Cedar Fork",
  notes: "Posted occupant load by the door. Floor wax smells on first Mondays.",
  outline: rectangle(0, 0, 9.144, 14.63),
  fixtures: [
    { label: "Stage", outline: rectangle(0, 12.192, 9.144, 2.438) },
    { label: "Wood stove", outline: rectangle(0, 5.486, 1.219, 1.524) },
    { label: "Tables", outline: rectangle(7.925, 8.229, 1.219, 1.829), movable: true },
  ],
  keepClear: [
    doorSwing("Left leaf", [3.658, 0], [4.572, 0], [3.658, 0.914]),
    doorSwing("Right leaf", [5.486, 0], [4.572, 0], [5.486, 0.914]),
    { label: "Way out", outline: rectangle(8.23, 4.267, 0.914, 1.219) },
  ],
  teacher: { outline: rectangle(0, 10.058, 9.144, 2.134) },
  mat: { length: 1.83, width: 0.61 },
  gaps: { side: 0.5, end: 0.3, wall: 0.5 },
  axis: "auto",
  postedCapacity: 28,
  currency: "USD",
  hire: { perHour: "22.00", minimumMinutes: 120, incrementMinutes: 60, freeBeforeMinutes: 30 },
});
