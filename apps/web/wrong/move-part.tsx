import { type CancelReason, takesMat } from "#core/roll";
import { useState } from "react";
import { ChoiceField } from "../fields/choice-field.tsx";
import { DateField } from "../fields/date-field.tsx";
import { Show } from "../parts/show.tsx";
import { startsAt } from "../tonight/session-times.ts";
import { CountBox, countTyped } from "./count-box.tsx";
import type { WrongHere } from "./wrong-here.ts";

type Props = {
  readonly here: WrongHere;
  readonly why: CancelReason;
  readonly halls: readonly { readonly id: string; readonly name: string }[];
};

/** The session goes to another day, time or hall, with everybody in it. */
export function MovePart({ here, why, halls }: Props) {
  const { id, session, document, run, writer, now } = here;
  const [date, setDate] = useState(session.date);
  const [time, setTime] = useState(document?.start ?? "19:00");
  const [hall, setHall] = useState(session.hall ?? "");
  const [mats, setMats] = useState(String(session.capacity));
  const capacity = countTyped(mats);
  const starts = startsAt(date, time, session.zone);
  const gone = starts !== null && Date.parse(starts) <= Date.parse(now);
  const taken = session.places.filter(takesMat).length;
  if (session.cancelled !== null || session.closed) return null;
  const move = () => {
    if (starts === null || gone || capacity === null) return;
    run(
      {
        kind: "move session",
        session: id,
        date,
        starts,
        hall: hall === "" ? null : hall,
        capacity,
        why,
      },
      `${session.name} moves to ${writer.day(date)}`,
    );
  };
  return (
    <Show summary="Or move it to another day or hall">
      <p>
        {taken === 0
          ? "Nobody has a place yet."
          : `${taken === 1 ? "1 has a place and keeps it" : `${taken} have a place and keep it`}; tell them, and let whoever cannot come give it up kindly.`}
      </p>
      <div className="fields">
        <DateField
          label="Day"
          value={date}
          put={setDate}
          problem={gone ? "That time is gone by. Choose one that is still to come." : null}
        />
        <DateField label="Begins" type="time" value={time} put={setTime} />
        <ChoiceField
          label="Hall"
          value={hall}
          choices={[
            { value: "", label: "somewhere else" },
            ...halls.map((it) => ({ value: it.id, label: it.name })),
          ]}
          onChange={setHall}
        />
        <CountBox label="Mats there" text={mats} put={setMats} />
      </div>
      <p>
        <button
          type="button"
          className="button reach"
          disabled={starts === null || gone || capacity === null}
          onClick={move}
        >
          Move it
        </button>
      </p>
    </Show>
  );
}
