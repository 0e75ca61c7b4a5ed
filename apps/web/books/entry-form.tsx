import { type FormEvent, type ReactNode, useState } from "react";
import { DateField } from "../fields/date-field.tsx";
import { FormOf } from "../fields/form.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { coinsOf } from "../people/coins.ts";
import { useOwnForm } from "../people/use-own-form.ts";
import type { Doing } from "../people/use-doing.ts";
import type { BooksAt } from "./books-at.ts";

export type FormAt = { readonly at: BooksAt; readonly doing: Doing };

export type Written = { readonly amount: number; readonly currency: string; readonly on: string };

type Props = FormAt & {
  readonly label: string;
  readonly button: string;
  /** what is wrong beside the amount, in words; "" where nothing is */
  readonly slip: string;
  /** writes it and answers whether it was done */
  readonly write: (written: Written) => Promise<boolean>;
  readonly children: ReactNode;
};

/** The amount and the day that every entry has, the fields of its kind before them, and what is wrong said in words. */
export function EntryForm({ at, doing, label, button, slip, write, children }: Props) {
  const { currency } = at.practice;
  const [text, setText] = useState("0");
  const [on, setOn] = useState(at.today);
  const [says, setSays] = useState("");
  const { form, hasSlips } = useOwnForm(currency);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const amount = coinsOf(text, currency);
    const none = amount === null || amount <= 0 ? "Write how much it is." : "";
    // what cannot be read is said at its field
    const wrong = slip !== "" ? slip : hasSlips ? "" : none;
    setSays(wrong);
    if (wrong !== "" || hasSlips || amount === null) return;
    if (await write({ amount, currency, on })) setText("0");
  };
  return (
    <FormOf form={form}>
      <form
        className="stack-close measure holds-fields"
        noValidate
        aria-label={label}
        onSubmit={(event) => void submit(event)}
      >
        {children}
        <MoneyField path="entry" label="How much" value={text} put={setText} />
        <DateField label="On" value={on} put={setOn} />
        <p className="field-problem books-slip" aria-live="polite">
          {says}
        </p>
        <p>
          <button type="submit" className="button" disabled={doing.busy}>
            {button}
          </button>
        </p>
      </form>
    </FormOf>
  );
}
