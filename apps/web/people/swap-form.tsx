import { useQuery } from "@tanstack/react-query";
import type { DoAskInput } from "#app/record";
import { placeOf, takesMat, type SessionState } from "#core/roll";
import { dateOfDay, dayNumberOf } from "#kernels/calendar";
import { type FormEvent, useState } from "react";
import { ChoiceField } from "../fields/choice-field.tsx";
import { dateWords } from "../words/dates.ts";
import { takeAsk } from "./held-ahead.tsx";
import type { PassAt } from "./pass-item.tsx";
import { sessionsQuery } from "./record-reads.ts";

/** So far ahead another date can be chosen, in days: a term. */
const AHEAD = 98;

/** A session of a block that was missed ahead, or cancelled, is taken on another date: the place goes with it. */
export function SwapForm({ pass, at, today, doing }: PassAt) {
  const { practiceId, practice, id } = at;
  const sessions = useQuery(sessionsQuery(practiceId, today, daysLater(today)));
  const [from, setFrom] = useState("");
  const [to, setTo] = useState("");
  const taken = new Set(pass.used.map(({ session }) => session));
  const own = pass.sessions.filter((session) => !taken.has(session));
  const others = (sessions.data ?? []).filter(
    (it) => !pass.sessions.includes(it.id) && isGood(it.session, pass.valid),
  );
  const swap = (event: FormEvent) => {
    event.preventDefault();
    if (from === "" || to === "") return;
    const held = sessions.data?.find((it) => it.id === from)?.session;
    void doing.run(
      ...givenUp(from, held, id),
      { kind: "change pass", pass: pass.pass, change: { kind: "swapped", on: today, from, to } },
      takeAsk(to, id, pass.pass, "block"),
    );
  };
  if (others.length === 0) return <p>No other date of its classes is in the record yet.</p>;
  return (
    <form className="stack-close measure holds-fields" noValidate onSubmit={swap}>
      <ChoiceField
        label="Instead of"
        value={from}
        choices={[{ value: "", label: "choose" }, ...own.map((it) => dateChoice(it, it.slice(-10)))]}
        onChange={setFrom}
      />
      <ChoiceField
        label="On"
        value={to}
        choices={[
          { value: "", label: "choose" },
          ...others.map((it) => dateChoice(it.id, it.session.date, it.session.name)),
        ]}
        onChange={setTo}
      />
      <p>
        <button type="submit" className="button" disabled={doing.busy || from === "" || to === ""}>
          Take it on the other date
        </button>
      </p>
    </form>
  );

  function dateChoice(value: string, date: string, name = "") {
    const day = dateWords(date, practice.locale);
    return { value, label: name === "" ? day : `${day}, ${name}` };
  }
}

function isGood({ class: of, cancelled, closed }: SessionState, valid: PassAt["pass"]["valid"]): boolean {
  return cancelled === null && !closed && (valid === "all" || valid.includes(of));
}

/** A place that is still held for the old date is given up with it. */
function givenUp(session: string, held: SessionState | undefined, person: string): readonly DoAskInput[] {
  const place = held === undefined ? undefined : placeOf(held, person);
  return place === undefined || !takesMat(place) ? [] : [{ kind: "give up place", session, place: place.id }];
}

function daysLater(today: string): string {
  const day = dayNumberOf(today);
  if (day === undefined) throw new Error(`not a date: ${today}`);
  return dateOfDay(day + AHEAD);
}
