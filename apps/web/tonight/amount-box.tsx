import { type CurrencyCode, readMoney } from "#core/words";
import { FieldRow } from "../fields/field-row.tsx";
import { readTypedAmount } from "../fields/read-typed-amount.ts";
import { currencySign } from "../words/money-words.ts";
import { useId } from "react";

type Props = {
  readonly label: string;
  readonly help?: string;
  readonly currency: CurrencyCode;
  readonly text: string;
  readonly put: (text: string) => void;
};

/** An amount of money as it is typed, with what is wrong with it under it. */
export function AmountBox({ label, help, currency, text, put }: Props) {
  const id = useId();
  const read = minorTyped(text, currency);
  const problem = text.trim() === "" || read !== null ? null : "Write it like 12.50.";
  return (
    <FieldRow id={id} label={label} help={help} unit={currencySign(currency)} problem={problem}>
      <input
        id={id}
        className="field-box"
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={text}
        aria-invalid={problem === null ? undefined : true}
        aria-describedby={problem === null ? undefined : `${id}-problem`}
        onChange={(event) => put(event.target.value)}
      />
    </FieldRow>
  );
}

/** Minor units of what was typed; null where it cannot be read. */
export function minorTyped(text: string, currency: CurrencyCode): number | null {
  const typed = readTypedAmount(text, currency, "");
  if (!typed.ok) return null;
  const read = readMoney(typed.value, currency, "");
  return read.ok ? read.value : null;
}
