import type { LengthUnits, Problem } from "#core/words";
import type { Polygon } from "#kernels/geometry";
import { useState } from "react";
import { LengthText } from "./length-text.tsx";
import { readSides, type Sides } from "./sides.ts";

type Props = {
  readonly sides: Sides;
  readonly units: LengthUnits;
  readonly onDraw: (outline: Polygon) => void;
};

/** A shape by a few lengths; nothing typed is lost when one of them cannot be read. */
export function SidesForm({ sides, units, onDraw }: Props) {
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [problems, setProblems] = useState<Readonly<Record<string, Problem>>>({});
  return (
    <form
      noValidate
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        const read = readSides(sides, typed, units);
        setProblems(read.ok ? {} : read.problems);
        if (read.ok) onDraw(read.outline);
      }}
    >
      <div>
        {sides.sides.map(({ name, label, help }) => (
          <LengthText
            key={name}
            label={label}
            {...(help === undefined ? {} : { help })}
            text={typed[name] ?? ""}
            problem={problems[name]}
            onText={(text) => setTyped({ ...typed, [name]: text })}
          />
        ))}
      </div>
      <DrawButton />
    </form>
  );
}

export function DrawButton() {
  return (
    <p>
      <button type="submit" className="button button-main">
        Draw this floor
      </button>
    </p>
  );
}
