import type { ReactNode } from "react";

type Props = {
  readonly id: string;
  readonly label: string;
  readonly help?: string | undefined;
  /** the unit, said after the figure */
  readonly unit?: string | undefined;
  readonly problem?: string | null | undefined;
  /** the box below the label instead of beside it */
  readonly wide?: boolean;
  readonly after?: ReactNode;
  readonly children: ReactNode;
};

/** One ruled row: label and help, the box, its unit, a mark after it, and below what is wrong with it. */
export function FieldRow({ id, label, help, unit, problem, wide = false, after, children }: Props) {
  return (
    <div className={wide ? "field field-wide" : "field"}>
      <div>
        <label className="field-label" htmlFor={id}>
          {label}
        </label>
        {help === undefined ? null : (
          <span className="field-help" id={`${id}-help`}>
            {help}
          </span>
        )}
      </div>
      <div className="field-entry">
        {children}
        {unit === undefined ? null : (
          <span className="field-unit" id={`${id}-unit`}>
            {unit}
          </span>
        )}
        {after}
      </div>
      {problem ? (
        <p className="field-problem" id={`${id}-problem`}>
          {problem}
        </p>
      ) : null}
    </div>
  );
}

/** The ids that describe a box, for aria-describedby. */
export function describedBy(
  id: string,
  given: { readonly help?: unknown; readonly unit?: unknown; readonly problem?: unknown },
): string | undefined {
  const ids = [
    given.help === undefined ? "" : `${id}-help`,
    given.unit === undefined ? "" : `${id}-unit`,
    given.problem ? `${id}-problem` : "",
  ].filter((it) => it !== "");
  return ids.length === 0 ? undefined : ids.join(" ");
}
