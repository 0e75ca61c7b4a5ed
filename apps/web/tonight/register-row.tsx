import { memo } from "react";
import type { RegisterRow } from "./register-rows.ts";
import type { Marked } from "./use-marks.ts";

type Props = {
  readonly row: RegisterRow;
  readonly mark: (marked: Marked) => void;
  /** opens what else can be done with this place */
  readonly more: (place: string) => void;
};

/** One person: a tap on the name marks her as here, the button beside it as not come, and dots open the rest. */
export const RegisterRowLine = memo(Line, (before, after) => isSame(before, after));

function Line({ row, mark, more }: Props) {
  const { place, name } = row;
  const { id, state } = place;
  if (state === "given up early" || state === "given up late") return null;
  const here = state === "attended";
  const away = state === "not come";
  const put = (to: "attended" | "not come") =>
    mark({ place: id, name, from: state, to: state === to ? "held" : to });
  return (
    <li className="reg-row" data-state={state}>
      <button
        type="button"
        className="reg-name"
        aria-pressed={here}
        aria-label={`${name} is here`}
        aria-describedby={`about-${id}`}
        onClick={() => put("attended")}
      >
        <span className="reg-box" aria-hidden="true">
          {here ? "✓" : ""}
        </span>
        <span className="reg-words">
          <span className="reg-who">
            <span>{name}</span>
            {row.speak ? <span className="reg-dot" aria-hidden="true" /> : null}
            {row.isNew ? <span className="reg-new">new</span> : null}
          </span>
          <span className="reg-how" id={`about-${id}`}>
            {row.isNew ? <span className="unseen">new, </span> : null}
            {row.speak ? <span className="reg-speak">speak to me · </span> : null}
            {row.how}
          </span>
        </span>
      </button>
      <button
        type="button"
        className="reg-away"
        aria-pressed={away}
        aria-label={`${name} did not come`}
        onClick={() => put("not come")}
      >
        {away ? "Not here" : "Not come"}
      </button>
      <button
        type="button"
        className="reg-more"
        data-owes={row.owes > 0 || undefined}
        aria-label={row.owes > 0 ? `${name}: pay, and more` : `${name}: more`}
        onClick={() => more(id)}
      >
        {row.owes > 0 ? "Pay" : "…"}
      </button>
    </li>
  );
}

/** A mark makes new rows of everybody: what a row shows decides whether it is drawn again. */
function isSame(a: Props, b: Props): boolean {
  return (
    a.mark === b.mark &&
    a.more === b.more &&
    a.row.name === b.row.name &&
    a.row.how === b.row.how &&
    a.row.owes === b.row.owes &&
    a.row.speak === b.row.speak &&
    a.row.isNew === b.row.isNew &&
    a.row.place.state === b.row.place.state
  );
}
