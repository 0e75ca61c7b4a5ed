import type { LengthUnits } from "#core/words";
import type { Polygon } from "#kernels/geometry";
import { useEffect, useRef, useState } from "react";
import { SidesForm } from "./sides-form.tsx";
import { lSides, rectangleSides } from "./sides.ts";
import { WalkForm } from "./walk-form.tsx";

type Props = {
  readonly units: LengthUnits;
  readonly onDraw: (outline: Polygon) => void;
  /** back to the floor that is there; undefined where there is none yet */
  readonly onLeave?: (() => void) | undefined;
};

const kinds = [
  { kind: "rectangle", word: "a plain rectangle" },
  { kind: "l", word: "an L" },
  { kind: "walk", word: "any other shape, wall by wall" },
] as const;

type Kind = (typeof kinds)[number]["kind"];

/** The first question of a floor: its shape and its measured lengths. */
export function StartingShape({ units, onDraw, onLeave }: Props) {
  const [kind, setKind] = useState<Kind>("rectangle");
  const section = useRef<HTMLElement>(null);
  const asked = onLeave !== undefined;
  useEffect(() => {
    // opened by a button that is gone now: the cursor follows
    if (asked) section.current?.focus();
  }, [asked]);
  return (
    <section className="stack floor-start" aria-label="The shape of the floor" ref={section} tabIndex={-1}>
      <fieldset className="fields">
        <legend>The floor is</legend>
        {kinds.map((it) => (
          <label key={it.kind} className="row floor-radio">
            <input
              type="radio"
              name="floor-shape"
              checked={kind === it.kind}
              onChange={() => setKind(it.kind)}
            />
            {it.word}
          </label>
        ))}
      </fieldset>
      <p className="soft small">
        {units === "metric"
          ? "Lengths in metres, like 7.25, or with their unit: 725 cm, 23 ft 9 in."
          : "Lengths in feet and inches, like 23 ft 9 in or 23' 9\", or with their unit: 7.25 m."}
      </p>
      <StartingForm key={kind} kind={kind} units={units} onDraw={onDraw} />
      {onLeave !== undefined && (
        <button type="button" className="button floor-start-leave" onClick={onLeave}>
          Keep the floor as it is
        </button>
      )}
    </section>
  );
}

function StartingForm({ kind, units, onDraw }: Pick<Props, "units" | "onDraw"> & { readonly kind: Kind }) {
  switch (kind) {
    case "rectangle":
      return <SidesForm sides={rectangleSides} units={units} onDraw={onDraw} />;
    case "l":
      return <SidesForm sides={lSides} units={units} onDraw={onDraw} />;
    case "walk":
      return <WalkForm units={units} onDraw={onDraw} />;
  }
}
