import type { SheetPart } from "#app/views";
import type { ReactNode } from "react";
import { ShowWorking, Working } from "../parts/working.tsx";

type Props = { readonly parts: readonly SheetPart[]; readonly children?: ReactNode };

/** The sums behind the answers of a section, and what else opens under them. */
export function PartWorking({ parts, children }: Props) {
  const ready = parts.flatMap((part) => (part.kind === "ready" ? [part] : []));
  if (ready.length === 0) return null;
  const workings = ready.flatMap((part) => part.workings).filter((it) => it.lines.length > 0);
  return (
    <ShowWorking>
      {workings.map((it) => (
        <Working key={it.title} caption={it.title} lines={it.lines} />
      ))}
      {children}
    </ShowWorking>
  );
}
