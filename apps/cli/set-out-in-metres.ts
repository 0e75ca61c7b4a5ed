import type { SetOut } from "#core/hall";
import { metresFromMillimetres } from "#core/words";

type StringEnd = NonNullable<SetOut["string"]>["from"];

/** The same dimensions for other programs, in metres as in all documents. */
export function setOutInMetres(setOut: SetOut): SetOut {
  const { lines, string } = setOut;
  return {
    ...setOut,
    string: string === null ? null : { from: endInMetres(string.from), to: endInMetres(string.to) },
    lines: lines.map((line) => ({
      ...line,
      from: metresFromMillimetres(line.from),
      first: metresFromMillimetres(line.first),
      centres: line.centres.map(metresFromMillimetres),
    })),
  };
}

export function endInMetres(end: StringEnd): StringEnd {
  return { ...end, distance: metresFromMillimetres(end.distance) };
}
