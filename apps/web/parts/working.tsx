import { memo, type ReactNode, useState } from "react";
import type { WorkingLine } from "#core/words";
import { Show } from "./show.tsx";

type Props = {
  /** what is worked out, for whoever hears the table */
  readonly caption: string;
  readonly lines: readonly WorkingLine[];
};

/**
 * A sum set like a worked example: words, the sum, the figure in its column, totals ruled off above. Drawn again only
 * when its lines are others.
 */
export const Working = memo(function Working({ caption, lines }: Props) {
  if (lines.length === 0) return null;
  return (
    <table className="working">
      <caption>{caption}</caption>
      <tbody>
        {lines.map((line) => (
          <tr key={`${line.label} ${line.sum} ${line.amount}`} data-total={line.total || undefined}>
            <th scope="row">
              {line.label}
              {line.sum === "" ? null : <span className="working-sum">{line.sum}</span>}
            </th>
            <td>{line.amount}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
});

type ShowProps = { readonly summary?: string; readonly children: ReactNode };

/** What opens under an answer; open from the start where the sheet is wide enough to set it beside. */
export function ShowWorking({ summary = "Show the working", children }: ShowProps) {
  // asked once: the browser lays the page out to answer it
  const [open] = useState(() => matchMedia("(min-width: 64rem)").matches);
  return (
    <Show summary={summary} open={open}>
      {children}
    </Show>
  );
}
