import { freeOf, type RefundFound, refundOf, type RefundWay } from "#core/books";
import { type MeansOfPaying, meansOfPaying } from "#core/roll";
import { type FormEvent, useState } from "react";
import { FormOf } from "../fields/form.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { Working } from "../parts/working.tsx";
import { screenWriter } from "../record/screen-writer.ts";
import { BlockDates } from "./block-dates.tsx";
import { coinsOf, textOfCoins } from "./coins.ts";
import { MeansField } from "./means-field.tsx";
import type { PassAt } from "./pass-item.tsx";
import { useOwnForm } from "./use-own-form.ts";

type Way = "shares" | "rule" | "other";

/** Money back: by equal shares and by the written rule, side by side with their sums, and she decides. */
export function RefundForm(it: PassAt) {
  const { pass } = it;
  if (freeOf(pass) === 0)
    return <p>All that is left is held by places ahead. Give those up first; then money can go back.</p>;
  return <RefundFields key={`${pass.left} ${pass.promised.length}`} {...it} />;
}

function RefundFields(it: PassAt) {
  const { pass, doing, today, at } = it;
  const { currency } = pass;
  const writer = screenWriter(at.practice.locale);
  const [asked, setAsked] = useState(freeOf(pass));
  const [sessions, setSessions] = useState<readonly string[]>([]);
  const [chosen, setWay] = useState<Way | null>(null);
  const [other, setOther] = useState("0.00");
  const [how, setHow] = useState<MeansOfPaying>("cash");
  const { form, hasSlips } = useOwnForm(currency);
  const isBlock = pass.form === "block";
  const classes = isBlock ? sessions.length : asked;
  const found = classes === 0 ? null : refundOf(pass, { classes, on: today }, writer);
  const way = chosen ?? (found !== null && found.suggested === found.byRule ? "rule" : "shares");
  const amount = found === null ? null : amountOf(found, way, coinsOf(other, currency));
  const giveBack = (event: FormEvent) => {
    event.preventDefault();
    if (hasSlips || amount === null) return;
    const change = { kind: "refunded" as const, on: today, classes, amount, how, sessions: [...sessions] };
    void doing.run({ kind: "change pass", pass: pass.pass, change });
  };
  return (
    <FormOf form={form}>
      <form className="stack holds-fields" noValidate onSubmit={giveBack}>
        {isBlock ? (
          <BlockDates it={it} chosen={sessions} put={setSessions} />
        ) : (
          <div className="measure">
            <NumberField
              path={`${pass.pass}.back`}
              label="Classes given back"
              unit={`of ${pass.left} left`}
              range={{ least: 1, most: freeOf(pass), whole: true }}
              value={asked}
              put={setAsked}
            />
          </div>
        )}
        {found === null ? (
          <p>Choose what is given back, and both sums stand here.</p>
        ) : (
          <>
            <RefundWays found={found} />
            <div>
              {found.sentences.map((words) => (
                <p key={words}>{words}</p>
              ))}
            </div>
            <WayChoice found={found} way={way} put={setWay} money={writer.money} name={pass.pass} />
            {way === "other" ? (
              <div className="measure">
                <MoneyField path={`${pass.pass}.other`} label="Another amount" value={other} put={setOther} />
              </div>
            ) : null}
            <div className="measure">
              <MeansField label="How it goes back" value={how} means={meansOfPaying} put={setHow} />
            </div>
            <p>
              <button type="submit" className="button" disabled={doing.busy || amount === null}>
                Give back {amount === null ? "" : writer.money(amount, currency)}
              </button>
            </p>
          </>
        )}
      </form>
    </FormOf>
  );
}

function amountOf({ byShares, byRule }: RefundFound, way: Way, other: number | null): number | null {
  if (way === "other") return other;
  return way === "rule" ? (byRule ?? byShares).amount : byShares.amount;
}

function RefundWays({ found: { byShares, byRule, currency } }: { readonly found: RefundFound }) {
  const caption = (title: string, { amount }: RefundWay) =>
    `${title}: ${textOfCoins(amount, currency)} ${currency}`;
  return (
    <div className="ways-beside">
      <Working caption={caption("By equal shares", byShares)} lines={byShares.working} />
      {byRule === null ? null : (
        <Working caption={caption("By the written rule", byRule)} lines={byRule.working} />
      )}
    </div>
  );
}

type ChoiceProps = {
  readonly found: RefundFound;
  readonly way: Way;
  readonly put: (way: Way) => void;
  readonly money: (amount: number, currency: string) => string;
  readonly name: string;
};

function WayChoice({ found: { byShares, byRule, currency }, way, put, money, name }: ChoiceProps) {
  const choices: readonly (readonly [Way, string])[] = [
    ["shares", `${money(byShares.amount, currency)}, by equal shares`],
    ...(byRule === null
      ? []
      : ([["rule", `${money(byRule.amount, currency)}, by the written rule`]] as const)),
    ["other", "another amount"],
  ];
  return (
    <fieldset className="fields">
      <legend>What goes back</legend>
      {choices.map(([value, label]) => (
        <label key={value} className="choice">
          <input type="radio" name={`way ${name}`} checked={way === value} onChange={() => put(value)} />
          {label}
        </label>
      ))}
    </fieldset>
  );
}
