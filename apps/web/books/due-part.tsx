import { type BooksInput, booksOwed } from "#app/views";
import { useMemo } from "react";
import { DoneWords } from "../people/done-words.tsx";
import { useDoing } from "../people/use-doing.ts";
import type { BooksAt } from "./books-at.ts";
import { OpenedOnly } from "./opened-only.tsx";
import { SettleForm } from "./settle-form.tsx";

type Props = { readonly input: BooksInput; readonly at: BooksAt };

/** What she has yet to pay: halls, cover, and whatever else was written down as owed. */
export function DuePart({ input, at }: Props) {
  const { due, dueTotal } = useMemo(() => booksOwed(input), [input]);
  const doing = useDoing(at.practiceId, at.practice.locale);
  const { currency } = input;
  const say = (amount: number) => input.writer.money(amount, currency);
  return (
    <section className="part books-part" aria-labelledby="due">
      <h2 id="due" className="part-title">
        Yet to pay
      </h2>
      <p>
        {due.length === 0
          ? "Nothing is written down as owed by you."
          : `${say(dueTotal)} is yet to pay. Open one when it is paid.`}
      </p>
      <ul className="list-plain ledger">
        {due.map((row) => (
          <li key={`${row.cost} ${row.to}`}>
            <OpenedOnly summary={`${say(row.amount)}: ${row.what}`}>
              {() => (
                <SettleForm
                  key={row.amount}
                  label={`Payment of ${row.what}`}
                  amount={row.amount}
                  currency={currency}
                  today={at.today}
                  usual="bank"
                  out
                  dated
                  busy={doing.busy}
                  settle={({ amount, by, on }) => {
                    const { cost, to } = row;
                    void doing.run({
                      kind: "write cost",
                      cost,
                      to,
                      amount,
                      currency,
                      on,
                      how: "due paid",
                      by,
                    });
                  }}
                  letGo={({ amount, on }) => {
                    const { cost, to } = row;
                    void doing.run({ kind: "write cost", cost, to, amount, currency, on, how: "let go" });
                  }}
                />
              )}
            </OpenedOnly>
          </li>
        ))}
      </ul>
      <DoneWords doing={doing} />
    </section>
  );
}
