import { bad, good, type Result } from "#core/words";
import { type NumberRange, readNumber } from "./read-number.ts";
import { TypedBox } from "./typed-box.tsx";

type Props = {
  readonly path: string;
  readonly label: string;
  readonly help?: string;
  /** a share: 0.5 is 50 % */
  readonly value: number;
  readonly put: (value: number) => void;
  /** the least and the most, in per cent */
  readonly least?: number;
  readonly most?: number;
  readonly guessable?: boolean;
  /** why it cannot be less or more */
  readonly beyond?: string;
};

/** A share that is shown and typed in per cent. */
export function PercentField({ value, put, least = 0, most = 100, beyond, ...common }: Props) {
  return (
    <TypedBox
      {...common}
      unit="%"
      shown={percentText(value)}
      read={(text) => readShare(text, { least, most }, common.path, beyond)}
      put={put}
      inputMode="decimal"
    />
  );
}

function readShare(text: string, range: NumberRange, place: string, beyond?: string): Result<number> {
  const read = readNumber(text.replace("%", ""), range, place);
  if (read.ok) return good(shareOf(read.value));
  if (beyond === undefined) return read;
  const told = read.problems.map((it) => (it.code === "number-out-of-range" ? { ...it, says: beyond } : it));
  return bad(...told);
}

/** 12.5 per cent is 0.125, without binary dust: 7 per cent is 0.07 and not 0.07000000000000001. */
function shareOf(percent: number): number {
  return Number((percent / 100).toFixed(8));
}

function percentText(share: number): string {
  return String(Number((share * 100).toFixed(6)));
}
