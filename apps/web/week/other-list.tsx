import { timeWords } from "#app/views";
import type { WeekPlan } from "#core/week";
import { type Locale, word } from "#core/words";
import { useRef, useState } from "react";
import { newId } from "../api/new-id.ts";
import { useDropTyped } from "../fields/form.tsx";
import { Show } from "../parts/show.tsx";
import { weekdayName } from "../words/dates.ts";
import { OtherFields } from "./other-fields.tsx";
import { type ChangePlan, type Other, withoutOther } from "./plan-edit.ts";
import { RowProblem } from "./row-problem.tsx";

type Props = {
  readonly plan: WeekPlan;
  readonly change: ChangePlan;
  /** every place that a class can be in */
  readonly places: readonly { readonly value: string; readonly label: string }[];
  readonly locale: Locale;
  readonly amount: (text: string) => string;
};

/** What could be taught for others, a line each that opens into its figures. */
export function OtherList({ plan, change, places, locale, amount }: Props) {
  const [fresh, setFresh] = useState<string | null>(null);
  const adder = useRef<HTMLButtonElement>(null);
  const dropTyped = useDropTyped();
  const add = () => {
    const id = newId();
    setFresh(id);
    const place = places.find(({ value }) => value !== plan.home)?.value ?? plan.home;
    change((before) => ({
      ...before,
      candidates: [...before.candidates, freshOther(id, place, before.weeks)],
    }));
  };
  return (
    <fieldset className="fields">
      <legend>What else you could teach</legend>
      <p className="small soft">
        Studio, gym, {word("cover", locale)}, private and company classes: what each pays, when, where and how
        often a year.
      </p>
      {plan.candidates.map((one) => (
        <div key={one.id} className="rows-one">
          <RowProblem path={`candidates.${one.id}`} />
          <Show summary={summaryOf(one, locale, amount)} open={one.id === fresh}>
            <OtherFields one={one} change={change} places={places} />
            <button
              type="button"
              className="link-button small"
              aria-label={`Take away ${nameOf(one)}`}
              onClick={() => {
                dropTyped(`candidates.${one.id}.`);
                change((before) => withoutOther(before, one.id));
                adder.current?.focus();
              }}
            >
              Take away
            </button>
          </Show>
        </div>
      ))}
      <button ref={adder} type="button" className="button" onClick={add}>
        Add what else you could teach
      </button>
    </fieldset>
  );
}

function nameOf({ name }: Other): string {
  return name === undefined || name.trim() === "" ? "A class without a name" : name;
}

function summaryOf(one: Other, locale: Locale, amount: Props["amount"]): string {
  const known = one.weekday >= 1 && one.weekday <= 7 ? weekdayName(one.weekday) : "";
  const when = `${known} ${timeWords(one.start, locale)}`;
  const said = one.out ? ", left out" : one.fixed ? ", promised" : "";
  return `${nameOf(one)}: ${when}, ${amount(one.contribution)} a session, ${one.sessions} a year${said}`;
}

function freshOther(id: string, place: string, weeks: number): Other {
  return {
    id,
    name: "",
    kind: "studio",
    place,
    weekday: 1,
    start: "18:00",
    minutes: { before: 10, teach: 60, after: 5, preparation: 15 },
    contribution: "0.00",
    sessions: Math.min(53, Math.max(1, Math.round(weeks))),
    fixed: false,
    out: false,
  };
}
