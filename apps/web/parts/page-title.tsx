import { type ReactNode, useEffect, useRef } from "react";

type Props = {
  /** what the browser's tab says before " – Hallful" */
  readonly tab: string;
  readonly children: ReactNode;
};

/** The one h1 of a page: names the tab and takes the focus, so that a screen reader hears the new page. */
export function PageTitle({ tab, children }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = tab === "" ? "Hallful" : `${tab} – Hallful`;
  }, [tab]);
  useEffect(() => {
    // the first page of a visit leaves the focus where the browser puts it
    if (visited) heading.current?.focus({ preventScroll: true });
    visited = true;
  }, []);
  return (
    <h1 ref={heading} tabIndex={-1}>
      {children}
    </h1>
  );
}

let visited = false;
