import { gapPresets, type HallDocument, hallDocumentSchema, matPresets } from "#core/hall";
import { metresFromMillimetres } from "#core/words";

/** A hall to begin with: a room of 12 by 8 metres, which she draws over with what she measured. */
export function newHall(currency: string, fresh: { readonly name: string }): HallDocument {
  const { side, end, wall } = gapPresets.usual;
  const { length, width } = matPresets.standard;
  return hallDocumentSchema.parse({
    format: "hallful/hall@1",
    name: fresh.name,
    outline: [
      [0, 0],
      [12, 0],
      [12, 8],
      [0, 8],
    ],
    mat: { length: metresFromMillimetres(length), width: metresFromMillimetres(width) },
    gaps: {
      side: metresFromMillimetres(side),
      end: metresFromMillimetres(end),
      wall: metresFromMillimetres(wall),
    },
    currency,
  });
}
