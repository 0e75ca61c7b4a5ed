import { MoneyField, OptionalMoneyField } from "../fields/money-field.tsx";
import type { Amount } from "./plan-edit.ts";

type Props = {
  /** path of the amount: "work.plum.perSession" */
  readonly path: string;
  readonly label: string;
  readonly help?: string;
  readonly per: string;
  /** whether it may be marked as a guess here; a figure of the class sheet is marked there */
  readonly guessable?: boolean;
  readonly value: Amount;
  readonly put: (value: Amount) => void;
};

/** One figure, and if it is not known well the two ends of its band. */
export function BandFields({ path, label, help, per, guessable = true, value, put }: Props) {
  const band = typeof value === "string" ? { middle: value } : value;
  const change = (part: { low?: string | undefined; middle?: string; high?: string | undefined }) => {
    const { low, middle, high } = { ...band, ...part };
    put(
      low === undefined && high === undefined
        ? middle
        : { middle, ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) },
    );
  };
  return (
    <>
      <MoneyField
        path={typeof value === "string" ? path : `${path}.middle`}
        label={label}
        {...(help === undefined ? {} : { help })}
        per={per}
        guessable={guessable}
        value={band.middle}
        put={(middle) => change({ middle })}
      />
      <OptionalMoneyField
        path={`${path}.low`}
        label={`${label}: at its low`}
        help="Empty where it is known well"
        per={per}
        value={band.low}
        put={(low) => change({ low })}
      />
      <OptionalMoneyField
        path={`${path}.high`}
        label={`${label}: at its high`}
        help="Eight chances of ten lie between low and high"
        per={per}
        value={band.high}
        put={(high) => change({ high })}
      />
    </>
  );
}
