import type { MoneyPlan } from "#core/cash";
import { type CurrencyCode, good, moneyText, readMoney, type Result } from "#core/words";
import { DateField } from "../fields/date-field.tsx";
import { useFormField } from "../fields/form.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { TypedBox } from "../fields/typed-box.tsx";
import { currencySign } from "../words/money-words.ts";
import type { ChangePlan } from "./plan-edit.ts";

type Props = {
  readonly plan: MoneyPlan;
  /** the first day as it is asked, also where the plan does not say it */
  readonly from: string;
  readonly change: ChangePlan;
};

/** From when on, for how long, and what is in the bank. */
export function BankFields({ plan, from, change }: Props) {
  const first = useFormField("from");
  const opening = useFormField("opening");
  return (
    <fieldset className="fields">
      <legend>The bank</legend>
      <DateField
        label="The first day"
        help="What was due before it counts as paid"
        value={plan.from ?? from}
        put={(value) => change((before) => ({ ...before, from: value }))}
        problem={first.problem === null ? null : `${first.problem.says} ${first.problem.next}`}
      />
      <NumberField
        path="months"
        label="Months to look at"
        unit="months"
        range={{ least: 1, most: 36, whole: true }}
        value={plan.months}
        put={(months) => change((before) => ({ ...before, months }))}
      />
      <TypedBox
        path="opening"
        label="In the bank that morning"
        help="Below nought where it is overdrawn"
        unit={currencySign(opening.currency)}
        shown={plan.opening}
        read={(text) => readBalance(text, opening.currency)}
        put={(value) => change((before) => ({ ...before, opening: value }))}
        inputMode="text"
      />
    </fieldset>
  );
}

/** A balance may be below nought: a hyphen or a minus sign before it. */
function readBalance(text: string, currency: CurrencyCode): Result<string> {
  const read = readMoney(text.replace("−", "-").replace(currencySign(currency), ""), currency, "opening");
  return read.ok ? good(moneyText(read.value, currency)) : read;
}
