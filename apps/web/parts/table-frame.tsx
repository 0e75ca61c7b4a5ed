import { type ReactNode } from "react";

type Props = { readonly labelledBy: string; readonly children: ReactNode };

/** A table that may be wider than the page is moved inside this frame, by a finger or by keys. */
export function TableFrame({ labelledBy, children }: Props) {
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- what can be moved must be reached by keys
    <section className="table-frame" aria-labelledby={labelledBy} tabIndex={0}>
      {children}
    </section>
  );
}
