import type { ClassOutlook } from "#core/class";
import type { ClassPart } from "../class-sheet/class-part.ts";
import { useDropTyped } from "../fields/form.tsx";
import { MoneyField, OptionalMoneyField } from "../fields/money-field.tsx";
import { OptionalNumberField } from "../fields/number-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { putOutlook } from "./outlook-part.ts";

type Evening = NonNullable<ClassOutlook["evening"]>;

/** The next session: whether to run it, have it covered, or cancel. */
export function EveningFields({ document, change }: ClassPart) {
  const dropTyped = useDropTyped();
  const evening = document.outlook?.evening;
  const put = (next: Evening | undefined) => putOutlook({ document, change }, "evening", next);
  return (
    <fieldset className="fields">
      <legend>The next session</legend>
      <TickField
        label="Ask whether to run it, have it covered or cancel"
        checked={evening !== undefined}
        put={(ask) => {
          dropTyped("outlook.evening");
          put(ask ? {} : undefined);
        }}
      />
      {evening === undefined ? null : <Asked evening={evening} put={put} />}
    </fieldset>
  );
}

type Props = { readonly evening: Evening; readonly put: (evening: Evening) => void };

function Asked({ evening, put }: Props) {
  const people = (name: "expected" | "booked", value: number | undefined) => {
    const { [name]: _, ...others } = evening;
    put(value === undefined ? others : { ...others, [name]: value });
  };
  const money = (name: "avoidable" | "fee", value: string | undefined) => {
    const { [name]: _, ...others } = evening;
    put(value === undefined ? others : { ...others, [name]: value });
  };
  return (
    <>
      <OptionalNumberField<undefined>
        path="outlook.evening.booked"
        label="Have booked"
        unit="people"
        range={{ least: 0, most: 1000, whole: true }}
        none={undefined}
        value={evening.booked}
        put={(booked) => people("booked", booked)}
      />
      <OptionalNumberField<undefined>
        path="outlook.evening.expected"
        label="Will come, as you think"
        help="Empty: as the record foretells"
        unit="people"
        range={{ least: 0, most: 1000 }}
        none={undefined}
        value={evening.expected}
        put={(expected) => people("expected", expected)}
      />
      <TickField
        label="The hall is charged even if you cancel now"
        checked={evening.hallPastNotice ?? true}
        put={(hallPastNotice) => put({ ...evening, hallPastNotice })}
      />
      <OptionalMoneyField
        path="outlook.evening.avoidable"
        label="Cancelling saves you"
        help="Travel, and what your evening is worth to you; empty: travel and the other costs above"
        value={evening.avoidable}
        put={(avoidable) => money("avoidable", avoidable)}
      />
      <MoneyField
        path="outlook.evening.cancelling"
        label="Cancelling costs you besides"
        help="Refunds and goodwill, as you feel it"
        value={evening.cancelling ?? "0"}
        put={(cancelling) => put({ ...evening, cancelling })}
      />
      <OptionalMoneyField
        path="outlook.evening.fee"
        label="A teacher who would cover takes"
        per="a session"
        value={evening.fee}
        put={(fee) => money("fee", fee)}
      />
    </>
  );
}
