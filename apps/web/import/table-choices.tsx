import type { ColumnUse, NamesRow } from "#core/table";
import { ChoiceField } from "../fields/choice-field.tsx";
import type { TableAsk, TableSeen } from "./table-ask.ts";

export type UseLabel<Use extends ColumnUse> = {
  readonly use: Use;
  readonly label: string;
  readonly needed: boolean;
};

type Props<Use extends ColumnUse> = {
  readonly title: string;
  readonly uses: readonly UseLabel<Use>[];
  readonly seen: TableSeen<Use>;
  readonly ask: TableAsk<Use>;
  /** whether the order of day and month is in question */
  readonly asksOrder: boolean;
  readonly put: (ask: TableAsk<Use>) => void;
};

/** Which column is what, with those that the table suggests chosen already; and how its dates are written. */
export function TableChoices<Use extends ColumnUse>(props: Props<Use>) {
  const { title, uses, seen, ask, asksOrder, put } = props;
  return (
    <fieldset className="fields holds-fields">
      <legend>{title}</legend>
      {uses.map((it) => (
        <ChoiceField
          key={it.use}
          label={it.label}
          value={columnValue(seen.columns?.[it.use])}
          choices={columnChoices(seen.names, it.needed)}
          onChange={(value) => put({ ...ask, columns: { ...ask.columns, [it.use]: columnSaid(value) } })}
        />
      ))}
      {asksOrder ? (
        <ChoiceField
          label="In a date like 3/9 the first figure is"
          value={ask.order ?? ""}
          choices={ORDERS}
          onChange={(value) => put({ ...ask, order: orderSaid(value) })}
        />
      ) : null}
      <ChoiceField
        label="The names of the columns"
        value={ask.names}
        choices={NAMES}
        onChange={(value) => put({ ...ask, names: namesSaid(value) })}
      />
    </fieldset>
  );
}

const NONE = "none";

const ORDERS = [
  { value: "", label: "as the dates show" },
  { value: "day-first", label: "the day" },
  { value: "month-first", label: "the month" },
] as const;

const NAMES: readonly { readonly value: NamesRow; readonly label: string }[] = [
  { value: "look", label: "looked for" },
  { value: "yes", label: "in the first row" },
  { value: "no", label: "not there" },
];

function columnChoices(names: readonly string[], needed: boolean) {
  const columns = names.map((name, column) => ({ value: String(column), label: name.slice(0, 40) }));
  return [{ value: NONE, label: needed ? "choose a column" : "not in it" }, ...columns];
}

function columnValue(column: number | undefined): string {
  return column === undefined ? NONE : String(column);
}

function columnSaid(value: string): number | null {
  return value === NONE ? null : Number(value);
}

function orderSaid(value: string) {
  return value === "day-first" || value === "month-first" ? value : null;
}

function namesSaid(value: string): NamesRow {
  return NAMES.find((it) => it.value === value)?.value ?? "look";
}
