import type { ChangeRow } from "#app/views";

type Props = { readonly title: string; readonly rows: readonly ChangeRow[] };

/** Figures in the order in which they are near to changing an answer; those that change nothing are told together. */
export function ChangeList({ title, rows }: Props) {
  if (rows.length === 0) return null;
  const near = rows.filter((it) => it.near !== "");
  const far = rows.filter((it) => it.near === "");
  return (
    <div className="stack-close">
      <h3>{title}</h3>
      <ol className="list-plain ledger">
        {near.map((it) => (
          <li key={it.key} className="change-row">
            <span>{it.says}</span>
            <span className="small soft">
              {it.near}
              {it.guess ? <strong>, a guess</strong> : ", known"}
            </span>
          </li>
        ))}
      </ol>
      {far.length === 0 ? null : (
        <p className="small soft">
          {far.length === 1 ? "One more figure changes" : `${far.length} more figures change`} nothing,
          however far {far.length === 1 ? "it is" : "they are"} off.
        </p>
      )}
    </div>
  );
}
