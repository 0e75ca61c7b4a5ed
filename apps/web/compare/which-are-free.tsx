import { freeHallsPart } from "#app/views";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { PracticeDocument } from "#core/words";
import { useState } from "react";
import type { Listed } from "../drafts/use-practice.ts";
import { ChoiceField } from "../fields/choice-field.tsx";
import { DateField } from "../fields/date-field.tsx";
import { nameOr } from "../places/hall-name.ts";
import { weekdayChoices } from "./weekday-choices.ts";

type Props = {
  readonly practice: PracticeDocument;
  readonly document: ClassDocument;
  readonly halls: readonly Listed<HallDocument>[];
};

/** Which halls are free at any time of the week; at first from letting in to locking up of the class. */
export function WhichAreFree({ practice, document, halls }: Props) {
  const [asked, ask] = useState(() => windowOf(document));
  const part = freeHallsPart({
    practice,
    document,
    halls: halls.map((it) => ({ id: it.id, name: nameOr(it.document.name, "A hall without a name") })),
    window: {
      weekday: Number(asked.weekday),
      from: minutesOf(asked.from),
      until: minutesOf(asked.until),
    },
  });
  return (
    <section className="part holds-fields" aria-labelledby="free">
      <h2 id="free" className="part-title">
        Which halls are free?
      </h2>
      <output className="answer">{part.says}</output>
      <div className="rows-one rows-compact">
        <ChoiceField
          label="Day"
          value={asked.weekday}
          choices={weekdayChoices}
          onChange={(weekday) => ask({ ...asked, weekday })}
        />
        <DateField type="time" label="From" value={asked.from} put={(from) => ask({ ...asked, from })} />
        <DateField type="time" label="Until" value={asked.until} put={(until) => ask({ ...asked, until })} />
      </div>
      {part.rows.length === 0 ? null : (
        <table className="figures">
          <caption>By what is written down of each hall below</caption>
          <thead>
            <tr>
              <th scope="col">Hall</th>
              <th scope="col">Free</th>
              <th scope="col">Then</th>
            </tr>
          </thead>
          <tbody>
            {part.rows.map((row) => (
              <tr key={row.id}>
                <th scope="row">{row.name}</th>
                <td>{row.free}</td>
                <td>{row.says}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

function windowOf({ weekday, start, minutes }: ClassDocument) {
  const begins = minutesOf(start);
  return {
    weekday: String(weekday),
    from: withinDay(begins - minutes.setUp),
    until: withinDay(begins + minutes.class + minutes.packDown),
  };
}

/** A field for a time shows no hour of another day. */
function withinDay(time: number): string {
  return clock(Math.min(1439, Math.max(0, time)));
}

function minutesOf(time: string): number {
  const [hours = "0", minutes = "0"] = time.split(":");
  return Number(hours) * 60 + Number(minutes);
}

function clock(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}
