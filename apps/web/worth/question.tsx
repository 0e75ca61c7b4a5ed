import { type ReactNode, useState } from "react";

type Props = {
  readonly title: string;
  /** the answer in one sentence, read without opening */
  readonly says: string;
  readonly children: ReactNode;
  readonly onOpen?: (open: boolean) => void;
};

/** One question about a plan: its answer as a line that opens into the working, which is made when it is opened. */
export function Question({ title, says, children, onOpen }: Props) {
  const [open, setOpen] = useState(false);
  return (
    <details
      className="question"
      onToggle={(event) => {
        // lists inside open and close too, and their events come by here
        if (event.target !== event.currentTarget) return;
        setOpen(event.currentTarget.open);
        onOpen?.(event.currentTarget.open);
      }}
    >
      <summary>
        <h3>{title}</h3>
        <span>{says}</span>
      </summary>
      {open && <div className="stack question-working">{children}</div>}
    </details>
  );
}
