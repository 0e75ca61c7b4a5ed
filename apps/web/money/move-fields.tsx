import { ChoiceField } from "../fields/choice-field.tsx";
import { DateField } from "../fields/date-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { BandFields } from "./band-fields.tsx";
import { type ChangePlan, type Move, withMove } from "./plan-edit.ts";

type Props = { readonly move: Move; readonly change: ChangePlan };

const ways = [
  { value: "out business", label: "A cost of the teaching" },
  { value: "in business", label: "Income of the teaching" },
  { value: "out private", label: "What you live on, or other private costs" },
  { value: "in private", label: "Pay of a job, or other money taxed already" },
];

const agains = [
  { value: "", label: "Once" },
  { value: "1", label: "Every month" },
  { value: "3", label: "Every three months" },
  { value: "6", label: "Every six months" },
  { value: "12", label: "Every year" },
];

/** The figures of one amount that comes or goes on its dates. */
export function MoveFields({ move, change }: Props) {
  const id = move.id ?? "";
  const put = (part: Partial<Move>) => change((before) => withMove(before, id, part));
  const known = agains.some(({ value }) => value === String(move.everyMonths ?? ""));
  const more = { value: String(move.everyMonths), label: `Every ${move.everyMonths} months` };
  return (
    <div>
      <WordsField label="What it is" value={move.name} onChange={(name) => put({ name })} />
      <ChoiceField
        label="What kind of money"
        value={`${move.way} ${move.business ? "business" : "private"}`}
        choices={ways}
        onChange={(value) =>
          put({ way: value.startsWith("in") ? "in" : "out", business: value.endsWith("business") })
        }
      />
      <BandFields
        path={`moves.${id}.amount`}
        label="How much"
        per="each time"
        value={move.amount}
        put={(amount) => put({ amount })}
      />
      <DateField label="On, or first on" value={move.on} put={(on) => put({ on })} />
      <ChoiceField
        label="How often"
        value={String(move.everyMonths ?? "")}
        choices={known ? agains : [...agains, more]}
        onChange={(value) =>
          change((before) => {
            const { everyMonths: _, ...rest } = before.moves.find((it) => it.id === id) ?? move;
            const next = value === "" ? rest : { ...rest, everyMonths: Number(value) };
            return { ...before, moves: before.moves.map((it) => (it.id === id ? next : it)) };
          })
        }
      />
    </div>
  );
}
