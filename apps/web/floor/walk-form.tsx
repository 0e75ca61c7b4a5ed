import { cornerName } from "#core/hall";
import type { LengthUnits } from "#core/words";
import type { Polygon } from "#kernels/geometry";
import { useState } from "react";
import { LengthText } from "./length-text.tsx";
import { OutlinePreview } from "./outline-preview.tsx";
import { DrawButton } from "./sides-form.tsx";
import { TurnChoice } from "./turn-choice.tsx";
import { closingWords, nextWall, readWalk, type WalkedEntry } from "./walk.ts";

type Props = { readonly units: LengthUnits; readonly onDraw: (outline: Polygon) => void };

/** The floor wall by wall, as one walks round it with a tape, drawn as it is entered. */
export function WalkForm({ units, onDraw }: Props) {
  const [walls, setWalls] = useState<readonly WalkedEntry[]>([nextWall, nextWall, nextWall, nextWall]);
  const [asked, setAsked] = useState(false);
  const { walked, problems } = readWalk(walls, units);
  const change = (index: number, entry: Partial<WalkedEntry>) =>
    setWalls(walls.map((it, at) => (at === index ? { ...it, ...entry } : it)));
  return (
    <form
      noValidate
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        setAsked(true);
        if (walked !== null) onDraw(walked.outline);
      }}
    >
      <p>
        Start in a corner and walk along the walls. For each one: how long it is, and which way you turn at
        its end.
      </p>
      <ol className="list-plain ledger floor-walk">
        {walls.map((wall, index) => {
          const name = `${cornerName(index)}–${cornerName((index + 1) % walls.length)}`;
          return (
            <li key={index}>
              <LengthText
                label={`Wall ${name}`}
                text={wall.length}
                problem={asked || wall.length !== "" ? problems[index] : undefined}
                onText={(length) => change(index, { length })}
              />
              <TurnChoice name={name} wall={wall} onChange={(turn) => change(index, turn)} />
            </li>
          );
        })}
      </ol>
      <div className="row">
        <button type="button" className="button" onClick={() => setWalls([...walls, nextWall])}>
          One more wall
        </button>
        <button
          type="button"
          className="button"
          disabled={walls.length <= 3}
          onClick={() => setWalls(walls.slice(0, -1))}
        >
          One wall fewer
        </button>
      </div>
      <p aria-live="polite">
        {walked === null ? "Enter every wall, three at least." : closingWords(walked, units)}
      </p>
      {walked !== null && <OutlinePreview outline={walked.outline} units={units} />}
      <DrawButton />
    </form>
  );
}
