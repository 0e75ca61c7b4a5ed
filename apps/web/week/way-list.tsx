import { type WayTold, waysTold, type WeekDocument } from "#core/week";
import { Show } from "../parts/show.tsx";
import { MINUTES, OptionalNumberField } from "../fields/number-field.tsx";
import { useState } from "react";
import { type ChangePlan, withWay } from "./plan-edit.ts";
import { withGuess } from "../fields/with-guess.ts";
import { RowProblem } from "./row-problem.tsx";

type Props = { readonly document: WeekDocument; readonly change: ChangePlan };

/** Every way that the week needs: stated, guessed from the map and marked so, or asked for. */
export function WayList({ document, change }: Props) {
  const ways = waysTold(document);
  // opened where something is to be filled in, and left to her from then on
  const missing = ways.some(({ minutes }) => minutes === null);
  const [asked, setAsked] = useState(missing);
  if (missing && !asked) setAsked(true);
  const name = (id: string) => document.places.find((it) => it.id === id)?.name ?? id;
  return (
    <Show key={String(asked)} summary={waysWords(ways)} open={asked}>
      <p className="small soft">
        From door to door, the same both ways unless you add the way back. Only the ways that the classes
        above can need are asked. A mile is 1.61 km.
      </p>
      {ways.length === 0 ? <p className="soft">None is needed yet.</p> : null}
      {ways.map((way) => (
        <WayRow
          key={`${way.from} ${way.to}`}
          way={way}
          called={`${name(way.from)} to ${name(way.to)}`}
          alone={ways.every((it) => it.from !== way.to || it.to !== way.from)}
          estimate={document.estimate}
          change={change}
          kmGuessed={document.guesses.includes(`travel.${way.from}.${way.to}.km`)}
        />
      ))}
    </Show>
  );
}

/** "12 ways, 3 of them guessed from the map, 1 not known" */
function waysWords(ways: readonly WayTold[]): string {
  const guessed = ways.filter(({ guess }) => guess).length;
  const unknown = ways.filter(({ minutes }) => minutes === null).length;
  return [
    ways.length === 1 ? "1 way between places" : `${ways.length} ways between places`,
    ...(guessed === 0 ? [] : [`${guessed} of them guessed from the map`]),
    ...(unknown === 0 ? [] : [`${unknown} not known yet`]),
  ].join(", ");
}

type RowProps = {
  readonly way: WayTold;
  readonly called: string;
  /** the way back is not stated besides */
  readonly alone: boolean;
  readonly estimate: WeekDocument["estimate"];
  readonly change: ChangePlan;
  /** its kilometres are worked out from its minutes */
  readonly kmGuessed: boolean;
};

function WayRow({ way, called, alone, estimate, change, kmGuessed }: RowProps) {
  const { from, to, minutes, km, guess } = way;
  const path = `travel.${from}.${to}`;
  const put = (next: Parameters<typeof withWay>[3], guessed = false) =>
    change((before) => withGuess(withWay(before, from, to, next), `${path}.km`, guessed));
  const kmFor = (stated: number) => Math.round((stated / 60) * estimate.kmPerHour * 10) / 10;
  return (
    <fieldset className="fields rows-one week-way">
      <legend>
        {called}
        {guess ? <span className="week-guess"> guessed from the map</span> : null}
      </legend>
      <div className="rows-compact">
        <OptionalNumberField<null>
          path={`${path}.minutes`}
          label="Minutes"
          range={MINUTES}
          none={null}
          value={minutes}
          put={(next) =>
            put(next === null ? null : { minutes: next, km: km ?? kmFor(next) }, km === null || guess)
          }
        />
        <OptionalNumberField<null>
          path={`${path}.km`}
          label="Kilometres"
          range={{ least: 0, most: 2000 }}
          none={null}
          guessable={way.stated !== null && kmGuessed}
          value={km}
          put={(next) => put(next === null || minutes === null ? null : { minutes, km: next })}
        />
      </div>
      {minutes === null ? (
        <p className="field-problem">Nobody says how long it takes: write the minutes from door to door.</p>
      ) : null}
      <RowProblem path={path} />
      {way.stated !== null && alone && minutes !== null && km !== null ? (
        <button
          type="button"
          className="link-button small"
          aria-label={`The way back differs: ${called}`}
          onClick={() => change((before) => withWay(before, to, from, { minutes, km }))}
        >
          The way back differs
        </button>
      ) : null}
    </fieldset>
  );
}
