import type { PlanDocument } from "#app/ports";
import type { MoneyPlan } from "#core/cash";
import { useRef, useState } from "react";
import { newId } from "../api/new-id.ts";
import { useDropTyped } from "../fields/form.tsx";
import { Show } from "../parts/show.tsx";
import { planOf as weekPlanOf } from "../week/plan-form.ts";
import { RowProblem } from "../week/row-problem.tsx";
import { yearFrom } from "../words/dates.ts";
import type { MoneyWords } from "./money-words-of.ts";
import { type ChangePlan, type Work, withoutWork } from "./plan-edit.ts";
import { WorkFields } from "./work-fields.tsx";

type Props = {
  readonly plan: MoneyPlan;
  readonly change: ChangePlan;
  readonly from: string;
  readonly week: PlanDocument;
  readonly words: MoneyWords;
};

/** Studio, gym, cover, private and company work, a line each that opens into its figures. */
export function WorkList({ plan, change, from, week, words }: Props) {
  const [fresh, setFresh] = useState<string | null>(null);
  const adder = useRef<HTMLButtonElement>(null);
  const dropTyped = useDropTyped();
  const offered = fromWeek(week, plan, from);
  const add = () => {
    const id = newId();
    setFresh(id);
    change((before) => ({ ...before, work: [...before.work, freshWork(id, from)] }));
  };
  return (
    <fieldset className="fields">
      <legend>What you teach for others</legend>
      <p className="small soft">Studios and gyms seldom pay on the day: say when their money really comes.</p>
      {plan.work.map((one) => (
        <div key={one.id} className="rows-one">
          <RowProblem path={`work.${one.id}`} />
          <Show summary={summaryOf(one, words)} open={one.id === fresh}>
            <WorkFields one={one} plan={plan} change={change} from={from} />
            <button
              type="button"
              className="link-button small"
              aria-label={`Take away ${nameOf(one)}`}
              onClick={() => {
                dropTyped(`work.${one.id}.`);
                change((before) => withoutWork(before, one.id));
                adder.current?.focus();
              }}
            >
              Take away
            </button>
          </Show>
        </div>
      ))}
      <p className="row">
        <button ref={adder} type="button" className="button" onClick={add}>
          Add work for others
        </button>
        {offered.length === 0 ? null : (
          <button
            type="button"
            className="button"
            onClick={() =>
              change((before) => ({
                ...before,
                work: [...before.work, ...offered],
                guesses: [...before.guesses, ...offered.map(({ id }) => `work.${id}.perSession`)],
              }))
            }
          >
            Take over {offered.length === 1 ? nameOf(offered[0]) : `${offered.length} classes`} from the week
          </button>
        )}
      </p>
    </fieldset>
  );
}

function nameOf(work: Work | undefined): string {
  return work?.name === undefined || work.name.trim() === "" ? "Work without a name" : work.name;
}

function summaryOf(one: Work, words: MoneyWords): string {
  const amount = typeof one.perSession === "string" ? one.perSession : one.perSession.middle;
  return `${nameOf(one)}: ${words.amount(amount)} a session`;
}

function freshWork(id: string, from: string): Work {
  return {
    id,
    name: "",
    kind: "studio",
    weekly: { weekday: 1, from, until: yearFrom(from), off: [] },
    perSession: "0.00",
    changes: [],
    paid: { when: "after-month", days: 30 },
    costs: [],
  };
}

/** What stands in the week and not here yet; every week of a year, which is a guess. */
function fromWeek(week: PlanDocument, plan: MoneyPlan, from: string): readonly Work[] {
  return weekPlanOf(week)
    .candidates.filter(({ id, kind, out }) => kind !== "own" && !out && plan.work.every((it) => it.id !== id))
    .map(({ id, name, kind, weekday, contribution }) => ({
      ...freshWork(id, from),
      ...(name === undefined ? {} : { name }),
      kind,
      weekly: { weekday, from, until: yearFrom(from), off: [] },
      perSession: contribution,
    }));
}
