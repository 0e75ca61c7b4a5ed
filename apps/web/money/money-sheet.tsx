import type { PlanDocument } from "#app/ports";
import { datesInWords } from "#app/views";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { PracticeDocument } from "#core/words";
import { currencyDigits } from "#core/words";
import { Fraction } from "fraction.js";
import { useDeferredValue, useMemo } from "react";
import type { Opened } from "../drafts/use-draft.ts";
import type { Listed } from "../drafts/use-practice.ts";
import { FormOf } from "../fields/form.tsx";
import { NotAnswered } from "../parts/not-answered.tsx";
import { currencyOf } from "../hall/hall-form.ts";
import { monthWords } from "../words/dates.ts";
import { moneyWords, wholeMoney } from "../words/money-words.ts";
import { BankPart } from "./bank-part.tsx";
import { MoneyInputs } from "./money-inputs.tsx";
import type { MoneyWords } from "./money-words-of.ts";
import { MoneyState } from "./money-state.tsx";
import { PathPart } from "./path-part.tsx";
import { useMoneyForm, usePlan } from "./plan-form.ts";
import { TaxPart } from "./tax-part.tsx";
import { useMoney } from "./use-money.ts";

type Props = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly classes: readonly Listed<ClassDocument>[];
  readonly halls: readonly Listed<HallDocument>[];
  readonly opened: Opened<PlanDocument>;
  /** what is kept as the week, for the classes for others that stand in it */
  readonly week: PlanDocument;
};

/** The answer first, then what it rests on; the fields change the plan that is kept. */
export function MoneySheet({ practiceId, practice, classes, halls, opened, week }: Props) {
  const { plan, change } = usePlan(opened);
  const around = useMemo(() => ({ practice, classes, halls }), [practice, classes, halls]);
  const money = useMoney(useDeferredValue(plan), around);
  const currency = currencyOf(practice.currency);
  const form = useMoneyForm(plan, change, opened.keeper, opened.draft.typed, currency, money.problems);
  const words = useMemo((): MoneyWords => {
    const { locale } = practice;
    const coins = 10 ** currencyDigits(currency);
    return {
      amount: (text) => moneyWords(new Fraction(text).mul(coins), currency, locale),
      major: (major) => wholeMoney(major, currency, locale),
      month: (month) => monthWords(month, locale),
      says: (sentence) => monthsInWords(datesInWords(sentence, locale), locale),
    };
  }, [practice, currency]);
  const { json } = money;
  return (
    <FormOf form={form}>
      <section className="part money-part" aria-labelledby="bank">
        <h2 id="bank" className="part-title">
          The bank, month by month
        </h2>
        <MoneyState money={money} words={words} />
        {json === null ? null : <BankPart json={json} words={words} />}
      </section>
      {json === null || json.tax === null ? null : (
        <section className="part money-part" aria-labelledby="pot">
          <h2 id="pot" className="part-title">
            The tax pot
          </h2>
          <TaxPart json={json} tax={json.tax} words={words} />
        </section>
      )}
      {json === null || (json.path === null && plan.path === undefined) ? null : (
        <section className="part money-part" aria-labelledby="path">
          <h2 id="path" className="part-title">
            From studio work to your own classes
          </h2>
          {json.path === null ? (
            <NotAnswered
              why={{
                kind: "missing",
                says: "What you need a month is not known yet, so nobody can say when studio work can go.",
                next: "Give it at the end of this page.",
              }}
            />
          ) : (
            <PathPart json={json} path={json.path} words={words} />
          )}
        </section>
      )}
      <MoneyInputs
        practiceId={practiceId}
        practice={practice}
        classes={classes}
        halls={halls}
        plan={plan}
        money={money}
        change={change}
        week={week}
        words={words}
      />
    </FormOf>
  );
}

/** "in 2027-03" as "in March 2027": what is left of a sentence once its dates are in words. */
function monthsInWords(sentence: string, locale: PracticeDocument["locale"]): string {
  return sentence.replace(/\b\d{4}-(0[1-9]|1[0-2])\b/g, (month) => monthWords(month, locale));
}
