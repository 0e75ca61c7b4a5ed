import type { YearQuestion } from "#app/views";
import type { HallBookings, YearPlan } from "#core/year";
import { bad, problem, type Problem, type Result } from "#core/words";
import { type ChangeEvent, useId, useMemo, useState } from "react";
import { TickField } from "../fields/tick-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { Show } from "../parts/show.tsx";
import { useWorkerAnswer } from "../prices/use-worker-answer.ts";
import { DayListFields, type LostLines } from "./day-list-fields.tsx";
import type { HallCalendarJob } from "./hall-calendar-worker.ts";
import { type ChangePlan, hallOf, withHall } from "./plan-form.ts";

type Props = {
  readonly id: string;
  readonly name: string;
  readonly path: string;
  readonly plan: YearPlan;
  readonly change: ChangePlan;
  readonly document: YearQuestion["document"];
  readonly start: string;
  readonly example: string;
  readonly lost: LostLines;
};

/** When a hall is closed, by what she knows and by its own calendar. */
export function HallFields({ id, name, path, plan, change, document, start, example, lost }: Props) {
  const hall = hallOf(plan, id);
  const [mine, setMine] = useState(hall.mine.join(", "));
  const put = (part: Parameters<typeof withHall>[2]) => change((before) => withHall(before, id, part));
  return (
    <Show summary={`${name}: ${knownOf(hall)}`}>
      <TickField
        label={`People vote in ${name}: it is closed on the days of elections`}
        checked={hall.polling}
        put={(polling) => put({ polling })}
      />
      <DayListFields
        title={`When ${name} is closed`}
        path={`${path}.closed`}
        one={`a time when ${name} is closed`}
        value={hall.closed}
        put={(closed) => put({ closed })}
        start={start}
        example={example}
        lost={lost}
      />
      <HallCalendar name={name} document={document} hall={hall} put={put} />
      <WordsField
        label={`Words in the titles of your own hires of ${name}`}
        help="Your own name or your class in the hall’s calendar is no clash. Several with commas between."
        value={mine}
        onChange={(text) => {
          setMine(text);
          put({
            mine: text
              .split(",")
              .map((it) => it.trim())
              .filter((it) => it !== ""),
          });
        }}
      />
    </Show>
  );
}

type Hall = YearPlan["halls"][number];

function knownOf({ closed, booked, polling }: Hall): string {
  const days = closed.days.length + closed.text.split("\n").filter((it) => it.trim() !== "").length;
  const words = [
    ...(days === 0 ? [] : [days === 1 ? "1 time closed" : `${days} times closed`]),
    ...(booked.length === 0 ? [] : [`${booked.length} booked by its calendar`]),
    ...(polling ? ["people vote there"] : []),
  ];
  return words.length === 0 ? "nothing said of when it is closed" : words.join(", ");
}

type CalendarProps = {
  readonly name: string;
  readonly document: YearQuestion["document"];
  readonly hall: Hall;
  readonly put: (part: { readonly booked: Hall["booked"] }) => void;
};

/** Reads the hall's own calendar beside the page, and shows what it found before it counts. */
function HallCalendar({ name, document, hall, put }: CalendarProps) {
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
    box.value = "";
    setRefused(read.ok ? [] : read.problems);
    setFile(read.ok ? { name: chosen.name, bytes: read.value } : null);
  };
  return (
    <div className="stack">
      <div className="stack-close">
        <label htmlFor={id}>The calendar of {name}, as a file (.ics)</label>
        <input id={id} type="file" accept=".ics,text/calendar" onChange={(event) => void take(event)} />
      </div>
      <ProblemList problems={refused} />
      {file === null ? null : (
        <Found
          file={file.name}
          answer={old ? null : answer}
          failure={failure}
          use={(booked) => {
            put({ booked: [...booked] });
            setFile(null);
          }}
        />
      )}
      {hall.booked.length === 0 ? null : (
        <p>
          {hall.booked.length === 1 ? "1 booking" : `${hall.booked.length} bookings`} of its calendar count.{" "}
          <button type="button" className="link-button" onClick={() => put({ booked: [] })}>
            Let them count no more
          </button>
        </p>
      )}
    </div>
  );
}

type FoundProps = {
  readonly file: string;
  readonly answer: Result<HallBookings> | null;
  readonly failure: string | null;
  readonly use: (booked: HallBookings["booked"]) => void;
};

function Found({ file, answer, failure, use }: FoundProps) {
  if (failure !== null)
    return (
      <p role="alert">
        “{file}” could not be read: {failure}
      </p>
    );
  if (answer === null) return <output>Reading “{file}” …</output>;
  if (!answer.ok) return <ProblemList problems={answer.problems} />;
  const { booked, notes } = answer.value;
  const count = booked.length === 1 ? "1 booking" : `${booked.length} bookings`;
  return (
    <div className="stack-close">
      <output>
        “{file}” has {count} in this year
        {booked.length === 0
          ? "."
          : `: ${booked
              .slice(0, 3)
              .map(({ title }) => title)
              .join(", ")}${booked.length > 3 ? " …" : ""}.`}
      </output>
      {notes.slice(0, 8).map(({ line, says }) => (
        <p key={`${line} ${says}`} className="field-problem">
          {line === 0 ? "" : `Line ${line}: `}
          {says}.
        </p>
      ))}
      {notes.length > 8 ? <p>And {notes.length - 8} more that could not be read.</p> : null}
      {booked.length === 0 ? null : (
        <p>
          <button type="button" className="button" onClick={() => use(booked)}>
            Count these instead of those before
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
    return bad(problem("calendar-too-large", "", says, "Have the hall’s calendar saved for one year only."));
  }
  try {
    return { ok: true, value: new Uint8Array(await file.arrayBuffer()) };
  } catch {
    const says = `“${file.name}” cannot be read from this device.`;
    return bad(problem("file-unreadable", "", says, "Choose it again."));
  }
}

function startWorker(): Worker {
  return new Worker(new URL("./hall-calendar-worker.ts", import.meta.url), { type: "module" });
}
