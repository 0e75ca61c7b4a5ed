import type { YearQuestion } from "#app/views";
import type { HallBookings } from "#core/year";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import { type ChangeEvent, type ReactNode, useId, useMemo, useState } from "react";
import { ProblemList } from "../parts/problem-list.tsx";
import { useWorkerAnswer } from "../prices/use-worker-answer.ts";
import type { HallCalendarJob } from "./hall-calendar-worker.ts";

type Booked = HallBookings["booked"];

type Props = {
  readonly label: string;
  readonly document: YearQuestion["document"];
  /** what was found, in a sentence after the file's name: "has 12 bookings in this year" */
  readonly says: (booked: Booked) => ReactNode;
  /** what the button says that makes it count; null where there is nothing to count */
  readonly button: (booked: Booked) => string | null;
  readonly use: (booked: Booked) => void;
};

/** Reads a calendar file beside the page, and shows what it found before any of it counts. */
export function CalendarFileField({ label, document, says, button, use }: Props) {
  const id = useId();
  const [file, setFile] = useState<{ readonly name: string; readonly bytes: Uint8Array } | null>(null);
  const [refused, setRefused] = useState<readonly Problem[]>([]);
  const { from, until, zone } = document;
  const job = useMemo(
    (): HallCalendarJob | null => (file === null ? null : { bytes: file.bytes, from, until, zone }),
    [file, from, until, zone],
  );
  const { answer, old, failure } = useWorkerAnswer<Result<HallBookings>>(startWorker, job);
  const take = async (event: ChangeEvent<HTMLInputElement>) => {
    const box = event.target;
    const chosen = box.files?.[0];
    if (chosen === undefined) return;
    const read = await bytesOf(chosen);
    // the same file can be chosen again after it was mended
    box.value = "";
    setRefused(read.ok ? [] : read.problems);
    setFile(read.ok ? { name: chosen.name, bytes: read.value } : null);
  };
  return (
    <div className="stack">
      <div className="stack-close">
        <label htmlFor={id}>{label}</label>
        <input id={id} type="file" accept=".ics,text/calendar" onChange={(event) => void take(event)} />
      </div>
      <ProblemList problems={refused} />
      {file === null ? null : (
        <Found
          file={file.name}
          answer={old ? null : answer}
          failure={failure}
          says={says}
          button={button}
          use={(booked) => {
            use(booked);
            setFile(null);
          }}
        />
      )}
    </div>
  );
}

type FoundProps = Pick<Props, "says" | "button" | "use"> & {
  readonly file: string;
  readonly answer: Result<HallBookings> | null;
  readonly failure: string | null;
};

const MOST_NOTES = 8;

function Found({ file, answer, failure, says, button, use }: FoundProps) {
  if (failure !== null)
    return (
      <p role="alert">
        “{file}” could not be read: {failure}
      </p>
    );
  if (answer === null) return <output>Reading “{file}” …</output>;
  if (!answer.ok) return <ProblemList problems={answer.problems} />;
  const { booked, notes } = answer.value;
  const words = button(booked);
  return (
    <div className="stack-close">
      <output>
        “{file}” {says(booked)}
      </output>
      {notes.slice(0, MOST_NOTES).map((it) => (
        <p key={`${it.line} ${it.says}`} className="field-problem">
          {it.line === 0 ? "" : `Line ${it.line}: `}
          {it.says}.
        </p>
      ))}
      {notes.length > MOST_NOTES ? <p>And {notes.length - MOST_NOTES} more that could not be read.</p> : null}
      {words === null ? null : (
        <p>
          <button type="button" className="button" onClick={() => use(booked)}>
            {words}
          </button>
        </p>
      )}
    </div>
  );
}

/** As much as the reader takes, looked at before it is read: a film has more bytes than a phone can hold. */
const MOST_BYTES = 25_000_000;

async function bytesOf(file: File): Promise<Result<Uint8Array>> {
  if (file.size > MOST_BYTES) {
    const says = `“${file.name}” is larger than 25 million bytes.`;
    return bad(problem("calendar-too-large", "", says, "Have the calendar saved for one year only."));
  }
  try {
    return good(new Uint8Array(await file.arrayBuffer()));
  } catch {
    const says = `“${file.name}” cannot be read from this device.`;
    return bad(problem("file-unreadable", "", says, "Choose it again."));
  }
}

function startWorker(): Worker {
  return new Worker(new URL("./hall-calendar-worker.ts", import.meta.url), { type: "module" });
}
