import { type ReactNode, useState } from "react";

type Props = { readonly summary: string; readonly children: () => ReactNode };

/** Opens under a line of words; what is in it is worked out only once it is open. */
export function OpenedOnly({ summary, children }: Props) {
  const [open, setOpen] = useState(false);
  return (
    <details className="show" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span>{summary}</span>
      </summary>
      <div className="stack">{open ? children() : null}</div>
    </details>
  );
}
