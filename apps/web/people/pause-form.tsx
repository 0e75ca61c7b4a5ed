import { useByAfterPause } from "#core/books";
import { type FormEvent, useState } from "react";
import { DateField } from "../fields/date-field.tsx";
import { Working } from "../parts/working.tsx";
import { screenWriter } from "../record/screen-writer.ts";
import { passDates } from "./pass-dates.ts";
import type { PassAt } from "./pass-item.tsx";

/** A pause: a day and nothing else. Why somebody stays away is asked nowhere and has no place here. */
export function PauseForm({ pass, doing, today }: PassAt) {
  const [from, setFrom] = useState(today);
  const pause = (event: FormEvent) => {
    event.preventDefault();
    const change = { kind: "paused", on: today, from } as const;
    void doing.run({ kind: "change pass", pass: pass.pass, change });
  };
  return (
    <form className="stack-close measure holds-fields" noValidate onSubmit={pause}>
      <p>No reason is needed. From that day on no class is taken off, and the use-by waits.</p>
      <DateField label="First day of the pause" value={from} put={setFrom} />
      <p>
        <button type="submit" className="button" disabled={doing.busy}>
          Pause it from this day
        </button>
      </p>
    </form>
  );
}

/** The end of a pause, with the new use-by and its sum. */
export function ResumeForm({ pass, doing, today, at, classes }: PassAt) {
  const from = pass.pausedFrom ?? today;
  const [on, setOn] = useState(today < from ? from : today);
  const { day } = screenWriter(at.practice.locale);
  const early = on < from;
  const dates = passDates(pass.valid, classes);
  const found = useByAfterPause({ useBy: pass.useBy, from, on: early ? from : on }, dates);
  const missed = dates.filter((date) => date >= from && date < on).length;
  const resume = (event: FormEvent) => {
    event.preventDefault();
    if (early) return;
    const change = { kind: "resumed", on, useBy: found.date } as const;
    void doing.run({ kind: "change pass", pass: pass.pass, change });
  };
  return (
    <form className="stack-close measure holds-fields" noValidate onSubmit={resume}>
      <DateField
        label="First day after the pause"
        value={on}
        put={setOn}
        problem={early ? `The pause begins on ${day(from)}. Give that day or a later one.` : null}
      />
      <Working
        caption="The use-by after the pause"
        lines={[
          { label: "Use-by before", sum: "", amount: day(pass.useBy) },
          { label: "Teaching dates in the pause", sum: `from ${day(from)} on`, amount: String(missed) },
          ...guessedLine(found.guessed),
          { label: "Use-by after", sum: "", amount: day(found.date), total: true },
        ]}
      />
      <p>
        <button type="submit" className="button" disabled={doing.busy}>
          End the pause, use by {day(found.date)}
        </button>
      </p>
    </form>
  );
}

/** Says for how many dates the year is not planned yet. */
export function guessedLine(guessed: number) {
  if (guessed === 0) return [];
  return [
    { label: "Of these beyond the dates that are planned", sum: "a guess, weekly", amount: String(guessed) },
  ];
}
