import { type MeansOfPaying, meansOfPaying } from "#core/roll";
import { type FormEvent, useState } from "react";
import { FormOf } from "../fields/form.tsx";
import { DateField } from "../fields/date-field.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { coinsOf, textOfCoins } from "../people/coins.ts";
import { MeansField } from "../people/means-field.tsx";
import { PAID_FROM, PlaceOfMoney } from "./place-of-money.tsx";
import { useOwnForm } from "../people/use-own-form.ts";

export type Settled = {
  readonly amount: number;
  readonly by: MeansOfPaying;
  readonly on: string;
};

export type SettleProps = {
  readonly label: string;
  readonly amount: number;
  readonly currency: string;
  readonly today: string;
  readonly usual: MeansOfPaying;
  /** whether she pays it, or it is paid to her */
  readonly out?: boolean;
  /** false where the record dates a payment by the moment it is written down */
  readonly dated: boolean;
  readonly busy: boolean;
  readonly settle: (settled: Settled) => void;
  /** what is unpaid is not to be paid after all; left out where that is settled elsewhere */
  readonly letGo?: (settled: Pick<Settled, "amount" | "on">) => void;
};

/** What was unpaid is paid, whole or in part. */
export function SettleForm({
  label,
  amount,
  currency,
  today,
  usual,
  dated,
  busy,
  settle,
  letGo,
  out = false,
}: SettleProps) {
  const [text, setText] = useState(() => textOfCoins(amount, currency));
  const [by, setBy] = useState<MeansOfPaying>(usual);
  const [on, setOn] = useState(today);
  const { form, hasSlips } = useOwnForm(currency);
  const coins = coinsOf(text, currency);
  const tooMuch = coins !== null && coins > amount;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (hasSlips || coins === null || coins === 0 || tooMuch) return;
    settle({ amount: coins, by, on });
  };
  return (
    <FormOf form={form}>
      <form className="stack-close measure holds-fields" noValidate aria-label={label} onSubmit={submit}>
        <MoneyField path="settle" label="Paid now" value={text} put={setText} />
        {out ? (
          <PlaceOfMoney label="Paid out of" value={by} places={PAID_FROM} put={setBy} />
        ) : (
          <MeansField label="How it is paid" value={by} means={meansOfPaying} put={setBy} />
        )}
        {dated ? <DateField label="Paid on" value={on} put={setOn} /> : null}
        <p className="field-problem books-slip" aria-live="polite">
          {tooMuch ? `No more than ${textOfCoins(amount, currency)} is unpaid. Write that or less.` : ""}
        </p>
        <p className="row">
          <button type="submit" className="button" disabled={busy}>
            Write this payment down
          </button>
          {letGo === undefined ? null : (
            <button
              type="button"
              className="button"
              disabled={busy}
              onClick={() => {
                if (!hasSlips && coins !== null && coins > 0 && !tooMuch) letGo({ amount: coins, on });
              }}
            >
              Not to be paid after all
            </button>
          )}
        </p>
      </form>
    </FormOf>
  );
}
