import { gapPresets, type HallDocument, hallDocumentSchema, matPresets } from "#core/hall";
import { metresFromMillimetres } from "#core/words";

/** A hall to begin with: no floor until she draws what she measured, so that no answer rests on a made-up room. */
export function newHall(currency: string, fresh: { readonly name: string }): HallDocument {
  const { side, end, wall } = gapPresets.usual;
  const { length, width } = matPresets.standard;
  return hallDocumentSchema.parse({
    format: "hallful/hall@1",
    name: fresh.name,
    outline: [],
    mat: { length: metresFromMillimetres(length), width: metresFromMillimetres(width) },
    gaps: {
      side: metresFromMillimetres(side),
      end: metresFromMillimetres(end),
      wall: metresFromMillimetres(wall),
    },
    currency,
  });
}
