import type { MoneyPlan } from "#core/cash";
import { useRef, useState } from "react";
import { newId } from "../api/new-id.ts";
import { useDropTyped } from "../fields/form.tsx";
import { Show } from "../parts/show.tsx";
import { RowProblem } from "../week/row-problem.tsx";
import type { MoneyWords } from "./money-words-of.ts";
import { MoveFields } from "./move-fields.tsx";
import { type ChangePlan, type Move, withoutMove } from "./plan-edit.ts";
import { usualCosts } from "./usual-costs.ts";

type Props = {
  readonly plan: MoneyPlan;
  readonly change: ChangePlan;
  readonly from: string;
  readonly currency: string;
  readonly words: MoneyWords;
};

/** Money besides the classes: insurance and fees, a job's pay, what she lives on. */
export function MoveList({ plan, change, from, currency, words }: Props) {
  const [fresh, setFresh] = useState<string | null>(null);
  const adder = useRef<HTMLButtonElement>(null);
  const dropTyped = useDropTyped();
  const add = () => {
    const id = newId();
    setFresh(id);
    const move: Move = { id, name: "", way: "out", amount: "0.00", on: from, business: true };
    change((before) => ({ ...before, moves: [...before.moves, move] }));
  };
  const addUsual = () =>
    change((before) => {
      const moves = usualCosts(currency, from, newId);
      const guesses = moves.map(({ id }) => `moves.${id}.amount`);
      return { ...before, moves: [...before.moves, ...moves], guesses: [...before.guesses, ...guesses] };
    });
  return (
    <fieldset className="fields">
      <legend>Other money</legend>
      <p className="small soft">Insurance, fees, training, music, kit; the pay of a job; what you live on.</p>
      {plan.moves.map((move) => {
        const id = move.id ?? "";
        return (
          <div key={id} className="rows-one">
            <RowProblem path={`moves.${id}`} />
            <Show summary={summaryOf(move, words)} open={id === fresh}>
              <MoveFields move={move} change={change} />
              <button
                type="button"
                className="link-button small"
                aria-label={`Take away ${nameOf(move)}`}
                onClick={() => {
                  dropTyped(`moves.${id}.`);
                  change((before) => withoutMove(before, id));
                  adder.current?.focus();
                }}
              >
                Take away
              </button>
            </Show>
          </div>
        );
      })}
      <p className="row">
        <button ref={adder} type="button" className="button" onClick={add}>
          Add other money
        </button>
        {plan.moves.some(({ name }) => name === "Insurance") ? null : (
          <button type="button" className="button" onClick={addUsual}>
            Add the usual yearly costs, as guesses
          </button>
        )}
      </p>
    </fieldset>
  );
}

function nameOf({ name }: Move): string {
  return name.trim() === "" ? "Money without a name" : name;
}

function summaryOf(move: Move, words: MoneyWords): string {
  const amount = typeof move.amount === "string" ? move.amount : move.amount.middle;
  const again =
    move.everyMonths === undefined ? "on" : move.everyMonths === 1 ? "monthly from" : "again and again from";
  return `${nameOf(move)}: ${words.amount(amount)} ${move.way}, ${words.says(`${again} ${move.on}`)}`;
}
