import type { YearQuestion } from "#app/views";
import type { YearPlan } from "#core/year";
import { useState } from "react";
import { TickField } from "../fields/tick-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { Show } from "../parts/show.tsx";
import { CalendarFileField } from "./calendar-file-field.tsx";
import { DayListFields, type LostLines } from "./day-list-fields.tsx";
import { firstTitles } from "./first-titles.ts";
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

/** What the hall's own calendar has, instead of what it had before. */
function HallCalendar({ name, document, hall, put }: CalendarProps) {
  return (
    <>
      <CalendarFileField
        label={`The calendar of ${name}, as a file (.ics)`}
        document={document}
        says={(booked) =>
          `has ${bookingsOf(booked.length)} in this year${firstTitles(booked.map(({ title }) => title))}`
        }
        button={(booked) => (booked.length === 0 ? null : "Count these instead of those before")}
        use={(booked) => put({ booked: [...booked] })}
      />
      {hall.booked.length === 0 ? null : (
        <p>
          {bookingsOf(hall.booked.length)} of its calendar count.{" "}
          <button type="button" className="link-button" onClick={() => put({ booked: [] })}>
            Let them count no more
          </button>
        </p>
      )}
    </>
  );
}

function bookingsOf(count: number): string {
  return count === 1 ? "1 booking" : `${count} bookings`;
}
