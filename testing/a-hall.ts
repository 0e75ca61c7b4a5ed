import { type Hall, type HallDocumentInput, readHall } from "#core/hall";

/** A plain hall of 8 × 12 m in metres, with what the test says instead. */
export function aHallDocument(instead: Partial<HallDocumentInput> = {}): HallDocumentInput {
  return {
    name: "Tithe Barn Hall",
    outline: [
      [0, 0],
      [8, 0],
      [8, 12],
      [0, 12],
    ],
    mat: { length: 1.83, width: 0.61 },
    gaps: { side: 0.5, end: 0.3, wall: 0.5 },
    ...instead,
  };
}

/** The same as a sound hall; throws where it is not one. */
export function aHall(instead: Partial<HallDocumentInput> = {}): Hall {
  const hall = readHall(aHallDocument(instead));
  if (!hall.ok) throw new Error(`not a sound hall: ${JSON.stringify(hall.problems)}`);
  return hall.value;
}
