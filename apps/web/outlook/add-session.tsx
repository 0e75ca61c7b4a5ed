import { type ClassDocument, nextSession } from "#core/class";
import type { HappenedDocument } from "#core/outlook";
import type { PracticeDocument } from "#core/words";
import { useId, useState } from "react";
import { DateField } from "../fields/date-field.tsx";
import { describedBy, FieldRow } from "../fields/field-row.tsx";
import { readNumber } from "../fields/read-number.ts";
import { dateWords, today } from "../words/dates.ts";

type Props = {
  readonly record: HappenedDocument;
  readonly document: Pick<ClassDocument, "weekday" | "year">;
  readonly practice: PracticeDocument;
  readonly places: number | null;
  readonly put: (recipe: (before: HappenedDocument) => HappenedDocument) => void;
};

/** Writes the next session down: its date is offered, the heads are asked, the rest may stay empty. */
export function AddSession({ record, document, practice, places, put }: Props) {
  const offered = nextSession(
    document,
    record.sessions.map(({ date }) => date),
    today(),
  );
  const [chosen, setChosen] = useState<string | null>(null);
  const [heads, setHeads] = useState("");
  const [newcomers, setNewcomers] = useState("");
  const [turnedAway, setTurnedAway] = useState("");
  const [tried, setTried] = useState(false);
  const [done, setDone] = useState("");
  const date = chosen ?? offered;
  const read = {
    heads: readPeople(heads),
    newcomers: readPeople(newcomers),
    turnedAway: readPeople(turnedAway),
  };
  const twice = record.sessions.some((it) => it.date === date);
  const missing = read.heads.value === undefined && read.heads.problem === null;
  const wrong = missing || twice || Object.values(read).some(({ problem }) => problem !== null);
  const add = () => {
    setTried(wrong);
    setDone("");
    if (wrong || read.heads.value === undefined) return;
    const session = {
      date,
      heads: read.heads.value,
      ...(read.newcomers.value === undefined ? {} : { newcomers: read.newcomers.value }),
      ...(read.turnedAway.value === undefined ? {} : { turnedAway: read.turnedAway.value }),
    };
    put((before) => ({
      // the first session fixes the places of its time, so that another mat plan does not rewrite the past
      ...(before.capacity === undefined && places !== null && places > 0 ? { capacity: places } : {}),
      ...before,
      sessions: [...before.sessions, session],
    }));
    setDone(`${dateWords(date, practice.locale)} is written down: ${session.heads} on mats.`);
    setChosen(null);
    for (const empty of [setHeads, setNewcomers, setTurnedAway]) empty("");
  };
  return (
    <fieldset className="session session-new">
      <legend>Write a session down</legend>
      <DateField
        label="Session of"
        help={dateWords(date, practice.locale)}
        value={date}
        put={setChosen}
        problem={tried && twice ? "That day is written down already. Mend it below." : null}
      />
      <PeopleBox
        label="On mats"
        text={heads}
        type={setHeads}
        problem={
          read.heads.problem ?? (tried && missing ? "Say how many were on mats; 0 if nobody came." : null)
        }
      />
      <PeopleBox label="First time" text={newcomers} type={setNewcomers} problem={read.newcomers.problem} />
      <PeopleBox
        label="Turned away"
        text={turnedAway}
        type={setTurnedAway}
        problem={read.turnedAway.problem}
      />
      <button type="button" className="button" onClick={add}>
        Write it down
      </button>
      <output className="small soft session-done">{done}</output>
    </fieldset>
  );
}

type People = { readonly value: number | undefined; readonly problem: string | null };

function readPeople(text: string): People {
  if (text.trim() === "") return { value: undefined, problem: null };
  const read = readNumber(text, { least: 0, most: 1000, whole: true }, "heads");
  if (read.ok) return { value: read.value, problem: null };
  const [first] = read.problems;
  return { value: undefined, problem: first === undefined ? null : `${first.says} ${first.next}` };
}

type BoxProps = {
  readonly label: string;
  readonly text: string;
  readonly type: (text: string) => void;
  readonly problem: string | null;
};

function PeopleBox({ label, text, type, problem }: BoxProps) {
  const id = useId();
  return (
    <FieldRow id={id} label={label} problem={problem}>
      <input
        id={id}
        className="field-box"
        type="text"
        inputMode="numeric"
        autoComplete="off"
        value={text}
        aria-invalid={problem === null ? undefined : true}
        aria-describedby={describedBy(id, { problem })}
        onChange={(event) => type(event.target.value)}
      />
    </FieldRow>
  );
}
