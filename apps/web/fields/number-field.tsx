import { good } from "#core/words";
import { type NumberRange, readNumber } from "./read-number.ts";
import { TypedBox } from "./typed-box.tsx";

type Common = {
  readonly path: string;
  readonly label: string;
  readonly help?: string;
  readonly unit?: string;
  readonly range: NumberRange;
  readonly guessable?: boolean;
};
type Props = Common & { readonly value: number; readonly put: (value: number) => void };
type OptionalProps<None> = Common & {
  readonly value: number | None;
  /** what an empty box means */
  readonly none: None;
  readonly put: (value: number | None) => void;
};

/** A plain number in a range. */
export function NumberField({ range, value, put, ...common }: Props) {
  return (
    <TypedBox
      {...common}
      shown={String(value)}
      read={(text) => readNumber(text, range, common.path)}
      put={put}
      inputMode={range.whole === true ? "numeric" : "decimal"}
    />
  );
}

/** The same where an empty box means that there is none. */
export function OptionalNumberField<None extends null | undefined>(props: OptionalProps<None>) {
  const { range, value, none, put, ...common } = props;
  return (
    <TypedBox<number | None>
      {...common}
      shown={value === null || value === undefined ? "" : String(value)}
      read={(text) => (text.trim() === "" ? good(none) : readNumber(text, range, common.path))}
      put={put}
      inputMode={range.whole === true ? "numeric" : "decimal"}
    />
  );
}

export const MINUTES: NumberRange = { least: 0, most: 1440, whole: true };
