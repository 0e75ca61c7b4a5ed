import type { PlanDocument } from "#app/ports";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import { currencyDigits, type PracticeDocument } from "#core/words";
import { Fraction } from "fraction.js";
import { useDeferredValue, useMemo } from "react";
import type { Opened } from "../drafts/use-draft.ts";
import type { Listed } from "../drafts/use-practice.ts";
import { FormOf } from "../fields/form.tsx";
import { currencyOf } from "../hall/hall-form.ts";
import { wholeMoney } from "../words/money-words.ts";
import { usePlans, useWeekForm } from "./plan-form.ts";
import { withOffered } from "./plan-edit.ts";
import { TrialBar, TrialButton } from "./trial-bar.tsx";
import { TrialPart } from "./trial-part.tsx";
import { moneyIn, useWeek } from "./use-week.ts";
import { WeekInputs } from "./week-inputs.tsx";
import { WeekParts } from "./week-parts.tsx";

type Props = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly classes: readonly Listed<ClassDocument>[];
  readonly halls: readonly Listed<HallDocument>[];
  readonly opened: Opened<PlanDocument>;
};

/** The week as it is kept, and beside it the one on trial while there is one; the fields change the one shown. */
export function WeekSheet({ practiceId, practice, classes, halls, opened }: Props) {
  const { trial, change, typing } = usePlans(opened);
  const around = useMemo(() => ({ practice, classes, halls }), [practice, classes, halls]);
  const present = useWeek(useDeferredValue(trial.kept), around);
  const tried = useWeek(useDeferredValue(trial.tried), around);
  const shown = trial.tried === null ? present : (tried ?? present);
  const currency = currencyOf(practice.currency);
  const plan = trial.tried ?? trial.kept;
  const form = useWeekForm(plan, change, typing, currency, shown?.problems ?? []);
  const words = useMemo(() => {
    const exact = moneyIn(practice);
    const coins = 10 ** currencyDigits(currency);
    return {
      amount: (text: string) => exact(new Fraction(text).mul(coins)),
      money: (major: number) => wholeMoney(major, currency, practice.locale),
    };
  }, [practice, currency]);
  if (present === null || shown === null) return null;
  const names = new Map(
    [
      ...plan.candidates,
      ...trial.kept.candidates,
      ...present.own,
      ...present.document.candidates,
      ...shown.document.candidates,
    ].map(({ id, name }) => [id, name ?? id]),
  );
  const write = { amount: words.amount, name: (id: string) => names.get(id) ?? id };
  const tries = {
    without: (id: string) => trial.begin((before) => withOffered(before, id, { out: true, fixed: false })),
    withOne: (id: string) => trial.begin((before) => withOffered(before, id, { out: false, fixed: true })),
    atMost: (by: "classes" | "evenings", count: number) =>
      trial.begin((before) => ({
        ...before,
        limits: { ...before.limits, [by === "classes" ? "classesAWeek" : "evenings"]: count },
      })),
  };
  return (
    <FormOf form={form}>
      <TrialButton trial={trial} />
      {tried === null || trial.tried === null ? null : (
        <TrialPart present={present} tried={tried} practice={practice} write={write} />
      )}
      <WeekParts
        week={shown}
        called={trial.tried === null ? "The best week" : "The week on trial"}
        practice={practice}
        write={write}
        money={words.money}
        tries={tries}
      />
      <WeekInputs
        practiceId={practiceId}
        practice={practice}
        halls={halls}
        plan={plan}
        week={shown}
        change={change}
        amount={words.amount}
      />
      <TrialBar trial={trial} write={write} />
    </FormOf>
  );
}
