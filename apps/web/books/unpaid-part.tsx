import { type BooksInput, booksOwed, type UnpaidRow } from "#app/views";
import type { DoAskInput } from "#app/record";
import { useMemo } from "react";
import { DoneWords } from "../people/done-words.tsx";
import { type Doing, useDoing } from "../people/use-doing.ts";
import type { BooksAt } from "./books-at.ts";
import { OpenedOnly } from "./opened-only.tsx";
import { SettleForm, type Settled, type SettleProps } from "./settle-form.tsx";

type Props = { readonly input: BooksInput; readonly at: BooksAt };

/** Who owes her what, each with a way to write the payment down. */
export function UnpaidPart({ input, at }: Props) {
  const { unpaid, unpaidTotal } = useMemo(() => booksOwed(input), [input]);
  const doing = useDoing(at.practiceId, at.practice.locale);
  const say = (amount: number) => input.writer.money(amount, input.currency);
  return (
    <section className="part books-part" aria-labelledby="unpaid">
      <h2 id="unpaid" className="part-title">
        Unpaid to you
      </h2>
      <p>
        {unpaid.length === 0
          ? "Nobody owes you anything."
          : `${say(unpaidTotal)} is unpaid, for ${unpaid.length} ${unpaid.length === 1 ? "thing" : "things"}. Open one to write its payment down.`}
      </p>
      <ul className="list-plain ledger">
        {unpaid.map((row) => (
          <li key={row.id}>
            <OpenedOnly summary={rowWords(row, say(row.amount))}>
              {() =>
                row.settle === null ? (
                  <p>Nothing in the record tells any more what this was for.</p>
                ) : (
                  <SettleForm
                    key={row.amount}
                    label={`Payment for ${row.what}`}
                    amount={row.amount}
                    currency={input.currency}
                    today={at.today}
                    usual={row.settle.kind === "work" ? "bank" : "cash"}
                    dated={row.settle.kind !== "place"}
                    busy={doing.busy}
                    settle={(settled) => {
                      const what = askOf(row, settled, input.currency);
                      if (what !== null) void doing.run(what);
                    }}
                    {...letGoOf(row, input.currency, doing)}
                  />
                )
              }
            </OpenedOnly>
          </li>
        ))}
      </ul>
      <DoneWords doing={doing} />
    </section>
  );
}

/** "£12.00: Una Jessamy, Saturday long practice, Saturday 18 April 2026" */
function rowWords({ person, what, settle }: UnpaidRow, amount: string): string {
  const unnamed = settle?.kind === "work" ? "" : "no name any more";
  return `${amount}: ${[person ?? unnamed, what].filter((it) => it !== "").join(", ")}`;
}

/** An invoice may be let go here; a pass with its refund, and a place in its register. */
function letGoOf({ settle }: UnpaidRow, currency: string, doing: Doing): Pick<SettleProps, "letGo"> {
  if (settle?.kind !== "work") return {};
  const { heading, invoice } = settle;
  return {
    letGo: ({ amount, on }) => {
      void doing.run({ kind: "write work", how: "let go", heading, invoice, amount, currency, on });
    },
  };
}

function askOf({ settle }: UnpaidRow, { amount, by, on }: Settled, currency: string): DoAskInput | null {
  switch (settle?.kind) {
    case "pass":
      return { kind: "change pass", pass: settle.pass, change: { kind: "paid", on, amount, how: by } };
    case "place":
      return { kind: "pay place", session: settle.session, place: settle.place, amount, by };
    case "work": {
      const { heading, invoice } = settle;
      return { kind: "write work", how: "paid", heading, invoice, amount, currency, on, by };
    }
    case undefined:
      return null;
  }
}
