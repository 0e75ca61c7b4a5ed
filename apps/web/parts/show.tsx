import { type ReactNode, useState } from "react";

type Props = {
  readonly summary: string;
  /** whether it is open when it first appears; from then on only she opens and closes it */
  readonly open?: boolean;
  readonly children: ReactNode;
};

/** Something that opens under a line of words, by the browser's own disclosure. */
export function Show({ summary, open = false, children }: Props) {
  const [atFirst] = useState(open);
  return (
    <details className="show" open={atFirst}>
      <summary>
        <span>{summary}</span>
      </summary>
      <div className="stack">{children}</div>
    </details>
  );
}
