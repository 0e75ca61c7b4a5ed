import { OptionalMoneyField } from "../fields/money-field.tsx";
import { OptionalNumberField } from "../fields/number-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import type { SalePart } from "./sale-fields.tsx";

/** What is agreed at the sale: what a class taken counts when the rest is given back, handing on, pauses. */
export function SaleTerms({ draft, put }: SalePart) {
  return (
    <fieldset className="fields measure holds-fields">
      <legend>Agreed at the sale</legend>
      <OptionalMoneyField
        path="sale.perClass"
        label="When the rest is given back, a class taken counts"
        help="Usually the price of a single. Left empty, the rest goes back by equal shares of the price."
        per="a class"
        value={draft.perClass}
        put={(perClass) => put({ ...draft, perClass })}
      />
      <OptionalNumberField
        path="sale.pauses"
        label="It can be paused"
        help="Left empty: as often as asked. No reason is ever needed."
        unit={draft.pauses === 1 ? "time" : "times"}
        range={{ least: 0, most: 50, whole: true }}
        value={draft.pauses}
        none={null}
        put={(pauses) => put({ ...draft, pauses })}
      />
      <TickField
        label="It can be handed on to somebody else"
        checked={draft.transferable}
        put={(transferable) => put({ ...draft, transferable })}
      />
      <p className="small soft">
        What may be agreed, and what must be given back, differs from place to place: check the local law, or
        ask a consumer adviser.
      </p>
    </fieldset>
  );
}
