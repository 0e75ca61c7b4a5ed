import type { MoneyPlan } from "#core/cash";
import { ChoiceField } from "../fields/choice-field.tsx";
import { MoneyField, OptionalMoneyField } from "../fields/money-field.tsx";
import { PercentField } from "../fields/percent-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { RowProblem } from "../week/row-problem.tsx";
import type { ChangePlan, Tax } from "./plan-edit.ts";
import { RateFields } from "./rate-fields.tsx";

type Props = {
  readonly plan: MoneyPlan;
  /** the tax that is asked, also where the plan does not say it; null for none */
  readonly tax: Tax | null;
  readonly change: ChangePlan;
};

const places = [
  { value: "", label: "Leave tax out" },
  { value: "uk", label: "United Kingdom, not Scotland" },
  { value: "scotland", label: "Scotland" },
  { value: "us", label: "United States" },
];

const fresh: Omit<Tax, "place"> = {
  filing: "single",
  other: "0",
  stateRate: 0,
  registered: false,
  soFar: { income: "0", costs: "0" },
  paidSoFar: "0",
  tables: [],
};

/** What the estimate of tax rests on besides the takings and the costs. */
export function TaxFields({ plan, tax, change }: Props) {
  const put = (part: Partial<Tax>) =>
    change((before) => ({
      ...before,
      tax: { ...(before.tax ?? tax ?? { ...fresh, place: "uk" }), ...part },
    }));
  const own = tax !== null && places.every(({ value }) => value !== tax.place);
  return (
    <fieldset className="fields">
      <legend>Tax</legend>
      <ChoiceField
        label="Where it is taxed"
        {...(plan.tax === undefined ? { help: "By the currency, until you choose" } : {})}
        value={tax?.place ?? ""}
        choices={own ? [...places, { value: tax.place, label: tax.place }] : places}
        onChange={(place) => (place === "" ? change((before) => ({ ...before, tax: null })) : put({ place }))}
      />
      <RowProblem path="tax.place" />
      {tax === null ? null : <TaxAmounts tax={tax} put={put} />}
      {tax === null ? null : <RateFields tax={tax} put={put} />}
    </fieldset>
  );
}

function TaxAmounts({ tax, put }: { readonly tax: Tax; readonly put: (part: Partial<Tax>) => void }) {
  const us = tax.place === "us";
  const last = tax.last ?? { bill: "0", onAccount: "0" };
  const putLast = (part: Partial<typeof last>) => put({ last: { ...last, ...part } });
  return (
    <>
      {us ? (
        <ChoiceField
          label="Filing"
          value={tax.filing}
          choices={[
            { value: "single", label: "Single" },
            { value: "joint", label: "Married, jointly" },
          ]}
          onChange={(filing) => put({ filing: filing === "joint" ? "joint" : "single" })}
        />
      ) : null}
      <MoneyField
        path="tax.other"
        label={us ? "Other income, of both where jointly" : "Other income, like a job"}
        help="Before tax"
        per="a year"
        guessable
        value={tax.other}
        put={(other) => put({ other })}
      />
      <OptionalMoneyField
        path="tax.atSource"
        label={us ? "Withheld from it" : "Tax taken off it already"}
        help="Empty takes what the rates say"
        per="a year"
        value={tax.atSource}
        put={(atSource) => put({ atSource })}
      />
      {us ? (
        <PercentField
          path="tax.stateRate"
          label="Income tax of the state, of the profit"
          most={50}
          guessable
          value={tax.stateRate}
          put={(stateRate) => put({ stateRate })}
        />
      ) : null}
      <MoneyField
        path="tax.soFar.income"
        label="Received in this tax year before the first day"
        value={tax.soFar.income}
        put={(income) => put({ soFar: { ...tax.soFar, income } })}
      />
      <MoneyField
        path="tax.soFar.costs"
        label="Costs paid in this tax year before the first day"
        value={tax.soFar.costs}
        put={(costs) => put({ soFar: { ...tax.soFar, costs } })}
      />
      <MoneyField
        path="tax.last.bill"
        label="The bill of the tax year before"
        help={us ? "What was due for it in all" : "0 where it was the first"}
        value={last.bill}
        put={(bill) => putLast({ bill })}
      />
      <MoneyField
        path="tax.last.onAccount"
        label={us ? "Paid towards it already" : "Asked on account towards it, both halves"}
        value={last.onAccount}
        put={(onAccount) => putLast({ onAccount })}
      />
      {us ? (
        <MoneyField
          path="tax.paidSoFar"
          label="Paid towards this tax year before the first day"
          value={tax.paidSoFar}
          put={(paidSoFar) => put({ paidSoFar })}
        />
      ) : (
        <TickField
          label="Registered for self assessment"
          checked={tax.registered}
          put={(registered) => put({ registered })}
        />
      )}
      <OptionalMoneyField
        path="tax.pot"
        label="In the tax pot on the first day"
        help="A part of what is in the bank"
        value={tax.pot}
        put={(pot) => put({ pot })}
      />
    </>
  );
}
