import { type CurrencyCode, good } from "#core/words";
import { currencySign } from "../words/money-words.ts";
import { useFormField } from "./form.tsx";
import { readTypedAmount } from "./read-typed-amount.ts";
import { TypedBox } from "./typed-box.tsx";

type Common = {
  readonly path: string;
  readonly label: string;
  readonly help?: string;
  /** per what: "an hour", "a session" */
  readonly per?: string;
  readonly guessable?: boolean;
};
type Props = Common & { readonly value: string; readonly put: (value: string) => void };
type OptionalProps = Common & {
  readonly value: string | undefined;
  readonly put: (value: string | undefined) => void;
};

/** An amount of money, as the decimal string of documents. */
export function MoneyField({ per, value, put, ...common }: Props) {
  const { currency } = useFormField(common.path);
  return (
    <TypedBox
      {...common}
      unit={unitOf(currency, per)}
      shown={withCoins(value, currency)}
      read={(text) => readTypedAmount(text, currency, common.path)}
      put={put}
      inputMode="decimal"
    />
  );
}

/** The same where an empty box means that there is none. */
export function OptionalMoneyField({ per, value, put, ...common }: OptionalProps) {
  const { currency } = useFormField(common.path);
  return (
    <TypedBox<string | undefined>
      {...common}
      unit={unitOf(currency, per)}
      shown={value === undefined ? "" : withCoins(value, currency)}
      read={(text) => (text.trim() === "" ? good(undefined) : readTypedAmount(text, currency, common.path))}
      put={put}
      inputMode="decimal"
    />
  );
}

/** "0" as "0.00", so that figures stand under figures; what cannot be read stays as it is. */
function withCoins(value: string, currency: CurrencyCode): string {
  const read = readTypedAmount(value, currency, "");
  return read.ok ? read.value : value;
}

/** "£ an hour": the sign as the currency's own country writes it. */
function unitOf(currency: string, per: string | undefined): string {
  const sign = currencySign(currency);
  return per === undefined ? sign : `${sign} ${per}`;
}
