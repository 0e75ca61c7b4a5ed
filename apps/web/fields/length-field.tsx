import {
  formatLength,
  good,
  type LengthUnits,
  metresFromMillimetres,
  millimetresFromMetres,
  parseLength,
} from "#core/words";
import { TypedBox } from "./typed-box.tsx";

type Props = {
  readonly path: string;
  readonly label: string;
  readonly help?: string;
  readonly units: LengthUnits;
  /** metres, as documents hold lengths */
  readonly value: number;
  readonly put: (metres: number) => void;
};

/** A length, typed and shown in metres or in feet and inches. */
export function LengthField({ units, value, put, ...common }: Props) {
  return (
    <TypedBox
      {...common}
      shown={formatLength(millimetresFromMetres(value), units)}
      read={(text) => {
        const read = parseLength(text, units, common.path);
        return read.ok ? good(metresFromMillimetres(read.value)) : read;
      }}
      put={put}
      inputMode="text"
    />
  );
}
