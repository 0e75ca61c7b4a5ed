import { type MeansOfPaying, meansOfPaying } from "#core/roll";
import { type FormEvent, useState } from "react";
import { FormOf } from "../fields/form.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { coinsOf, textOfCoins } from "./coins.ts";
import { MeansField } from "./means-field.tsx";
import type { PassAt } from "./pass-item.tsx";
import { useOwnForm } from "./use-own-form.ts";

/** Money comes in for a pass that was to be paid later, whole or in part. */
export function PayForm({ pass, doing, today }: PassAt) {
  const { currency, unpaid } = pass;
  const [amount, setAmount] = useState(() => textOfCoins(unpaid, currency));
  const [how, setHow] = useState<MeansOfPaying>("cash");
  const { form, hasSlips } = useOwnForm(currency);
  const pay = (event: FormEvent) => {
    event.preventDefault();
    const coins = coinsOf(amount, currency);
    if (hasSlips || coins === null) return;
    const change = { kind: "paid", on: today, amount: coins, how } as const;
    void doing.run({ kind: "change pass", pass: pass.pass, change });
  };
  return (
    <FormOf form={form}>
      <form className="stack-close measure holds-fields" noValidate onSubmit={pay}>
        <MoneyField path={`${pass.pass}.pay`} label="Paid now" value={amount} put={setAmount} />
        <MeansField label="How it is paid" value={how} means={meansOfPaying} put={setHow} />
        <p>
          <button type="submit" className="button" disabled={doing.busy}>
            Write this payment down
          </button>
        </p>
      </form>
    </FormOf>
  );
}
