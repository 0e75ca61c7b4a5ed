import { type MeansOfPaying, paidFor } from "#core/roll";
import { useState } from "react";
import { TickField } from "../fields/tick-field.tsx";
import { currencyOf } from "../hall/hall-form.ts";
import { AmountBox, minorTyped } from "./amount-box.tsx";
import { BigChoice } from "./big-choice.tsx";
import { amountText } from "./amount-text.ts";
import type { RegisterHere } from "./register-here.ts";
import type { RegisterRow } from "./register-rows.ts";
import { SheetDialog } from "./sheet-dialog.tsx";

type Props = {
  readonly here: RegisterHere;
  readonly row: RegisterRow;
  readonly close: () => void;
};

/** What else can be done with one place: money in and back, the place given up, whom to ring. */
export function PlaceMore({ here, row, close }: Props) {
  return (
    <SheetDialog title={row.name} close={close}>
      <p>{row.how}</p>
      {row.speak ? (
        <p>A dot stands beside this name: speak with her before the class, away from the others.</p>
      ) : null}
      {row.emergency === "" ? null : <p>If something happens, ring {row.emergency}.</p>}
      {row.owes > 0 ? <Pay here={here} row={row} close={close} /> : null}
      {row.place.state === "held" ? <GiveUp here={here} row={row} close={close} /> : null}
      {paidFor(row.place) > 0 ? <GiveBack here={here} row={row} close={close} /> : null}
    </SheetDialog>
  );
}

const means: readonly { readonly value: MeansOfPaying; readonly label: string }[] = [
  { value: "cash", label: "Cash" },
  { value: "card", label: "Card" },
  { value: "bank", label: "Bank" },
];

function Pay({ here, row, close }: Props) {
  const { id, session, writer, run } = here;
  const currency = currencyOf(session.currency);
  const [text, setText] = useState(amountText(row.owes, currency));
  const amount = minorTyped(text, currency) ?? 0;
  const pay = (by: MeansOfPaying) => {
    const words = `${row.name} paid ${writer.money(amount, currency)} by ${by}`;
    if (run({ kind: "pay place", session: id, place: row.place.id, amount, by }, words)) close();
  };
  return (
    <section className="stack-close" aria-label="Take the money">
      <AmountBox label="Paid now" currency={currency} text={text} put={setText} />
      <div className="big-choices">
        {means.map((it) => (
          <button
            key={it.value}
            type="button"
            className="button button-main reach"
            disabled={amount < 1}
            onClick={() => pay(it.value)}
          >
            {it.label} {amount < 1 ? "" : writer.money(amount, currency)}
          </button>
        ))}
      </div>
    </section>
  );
}

function GiveUp({ here, row, close }: Props) {
  const { id, record, run } = here;
  const [kindly, setKindly] = useState(false);
  const asked = { kind: "give up place", session: id, place: row.place.id } as const;
  const says = (kind: boolean) => {
    const would = record.keeper.would({ ...asked, kindly: kind });
    return would.ok ? would.value.says.join(" ") : would.problems.map((it) => it.says).join(" ");
  };
  // where kindness changes nothing it is not asked for
  const mayBeKind = says(false) !== says(true);
  return (
    <section className="stack-close" aria-label="Give the place up">
      <p className="small">
        If the place is given up now, this is what {row.name} reads: “{says(kindly)}”
      </p>
      {mayBeKind ? <TickField label="Let the lateness go" checked={kindly} put={setKindly} /> : null}
      <button
        type="button"
        className="button reach"
        onClick={() => {
          if (run({ ...asked, kindly }, `${row.name} gives the place up`)) close();
        }}
      >
        Give the place up
      </button>
    </section>
  );
}

function GiveBack({ here, row, close }: Props) {
  const { id, session, writer, run } = here;
  const [by, setBy] = useState<MeansOfPaying>(row.place.paid.at(-1)?.by ?? "cash");
  const amount = paidFor(row.place);
  const money = writer.money(amount, session.currency);
  return (
    <section className="stack-close" aria-label="Give money back">
      <BigChoice label={`${money} came in; give it back by`} value={by} choices={means} put={setBy} />
      <button
        type="button"
        className="button reach"
        onClick={() => {
          const words = `${money} given back to ${row.name} by ${by}`;
          if (run({ kind: "give money back", session: id, place: row.place.id, amount, by }, words)) close();
        }}
      >
        Give {money} back
      </button>
    </section>
  );
}
