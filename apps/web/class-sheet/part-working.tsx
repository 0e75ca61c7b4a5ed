import type { SheetPart } from "#app/views";
import type { ReactNode } from "react";
import { ShowWorking, Working } from "../parts/working.tsx";

type Props = { readonly part: SheetPart; readonly children?: ReactNode };

/** The sums behind an answer, and what else opens under it. */
export function PartWorking({ part, children }: Props) {
  if (part.kind !== "ready") return null;
  const workings = part.workings.filter((it) => it.lines.length > 0);
  if (workings.length === 0 && children === undefined) return null;
  return (
    <ShowWorking>
      {workings.map((it) => (
        <Working key={it.title} caption={it.title} lines={it.lines} />
      ))}
      {children}
    </ShowWorking>
  );
}
