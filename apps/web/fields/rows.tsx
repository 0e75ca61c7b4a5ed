import { type ReactNode, useRef } from "react";
import { useDropTyped } from "./form.tsx";

type Props<Row> = {
  readonly title: string;
  readonly path: string;
  readonly rows: readonly Row[];
  readonly fresh: () => Row;
  readonly add: string;
  /** "pass 2", for the button that takes it away */
  readonly named: (index: number) => string;
  readonly put: (rows: readonly Row[]) => void;
  readonly renderRow: (row: Row, put: (row: Row) => void, path: string) => ReactNode;
  /** a mark for the whole list */
  readonly before?: ReactNode;
  /** the fields of a row side by side, their labels above them */
  readonly compact?: boolean;
};

/** A list of like rows, each of which can be taken away, with one button for another. */
export function Rows<Row>({
  title,
  path,
  rows,
  fresh,
  add,
  named,
  put,
  renderRow,
  before,
  compact = false,
}: Props<Row>) {
  const dropTyped = useDropTyped();
  const adder = useRef<HTMLButtonElement>(null);
  const takeAway = (index: number) => {
    // the texts of later rows would stand in the wrong row
    dropTyped(`${path}[`);
    put(rows.filter((_, at) => at !== index));
    adder.current?.focus();
  };
  return (
    <fieldset className="fields">
      <legend>{title}</legend>
      {before ? <div className="rows-before">{before}</div> : null}
      {rows.map((it, index) => (
        // rows have no name of their own: their place is what tells them apart
        // oxlint-disable-next-line react/no-array-index-key
        <div key={index} className={compact ? "rows-one rows-compact" : "rows-one"}>
          {renderRow(
            it,
            (changed) => put(rows.map((other, at) => (at === index ? changed : other))),
            `${path}[${index}]`,
          )}
          <button
            type="button"
            className="link-button small rows-away"
            aria-label={`Take away ${named(index)}`}
            onClick={() => takeAway(index)}
          >
            Take away
          </button>
        </div>
      ))}
      <button ref={adder} type="button" className="link-button" onClick={() => put([...rows, fresh()])}>
        {add}
      </button>
    </fieldset>
  );
}
