import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { Writer } from "#core/words";
import { useId, useState } from "react";
import { ChoiceField } from "../fields/choice-field.tsx";
import { FieldRow } from "../fields/field-row.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { usePractice } from "../drafts/use-practice.ts";
import { ProblemList } from "../parts/problem-list.tsx";
import type { Lookup } from "../record/lookup.ts";
import { useRecord } from "../record/use-record.ts";
import { today } from "../words/dates.ts";
import { type NoticeName, noticeChoices, noticeRules } from "./notice-choice.ts";
import { datesAhead, type OpenAsk, openOrder, sessionId } from "./open-order.ts";
import { useRun, useWriter } from "./register-here.ts";
import { useClassPlaces } from "./use-class-places.ts";

type Props = {
  readonly practiceId: string;
  readonly id: string;
  readonly document: ClassDocument;
};

/** What is set once for all dates of a class, and the button that puts them into the record. */
export function DatesForm({ practiceId, id, document }: Props) {
  const here = usePractice(practiceId);
  const record = useRecord(practiceId, here.practice.locale);
  const hall: HallDocument | null = here.halls.find((it) => it.id === document.hall)?.document ?? null;
  const found = useClassPlaces(document, hall);
  const [typed, setTyped] = useState<string | null>(null);
  const [notice, setNotice] = useState<NoticeName>("hours");
  const [waived, setWaived] = useState(true);
  const { run, said } = useRun(record);
  const writer = useWriter(here.practice.locale);
  const text = typed ?? (found === null ? "" : String(found));
  const capacity = /^[1-9]\d{0,3}$/.test(text.trim()) ? Number(text) : null;
  const order =
    capacity === null
      ? null
      : openOrder({
          id,
          document,
          practice: here.practice,
          today: today(),
          capacity,
          posted: hall?.postedCapacity ?? null,
          notice: noticeRules[notice],
          firstLateWaived: waived,
        });
  return (
    <div className="stack holds-fields measure">
      <div>
        <MatsBox text={text} put={setTyped} problem={text !== "" && capacity === null} />
        <ChoiceField
          label="A place can be given up until"
          value={notice}
          choices={noticeChoices}
          onChange={(value) => setNotice(noticeChoices.find((it) => it.value === value)?.value ?? "hours")}
        />
      </div>
      <p className="small">{pricesWords(order, writer)}</p>
      <TickField label="Somebody’s first lateness is let go" checked={waived} put={setWaived} />
      <p className="row">
        <button
          type="button"
          className="button button-main"
          disabled={order === null}
          onClick={() => {
            if (order !== null) run(order, `The dates of ${order.name} go into the record`);
          }}
        >
          Put these dates into the record
        </button>
        <span className="small soft">{knownWords(record.look, id, document)}</span>
      </p>
      <output>{said.says.join(" ")}</output>
      <ProblemList problems={said.problems} />
    </div>
  );
}

function knownWords({ session }: Lookup, id: string, document: ClassDocument): string {
  const known = datesAhead(document, today()).filter((date) => session(sessionId(id, date)) !== undefined);
  const near =
    known.length === 0
      ? ""
      : `${known.length === 1 ? "1 of them is" : `${known.length} of them are`} there already, as far as this device knows. `;
  return `${near}Dates that are in the record stay as they are.`;
}

function pricesWords(order: OpenAsk | null, { money }: Writer): string {
  if (order === null) return "What is asked comes from the prices of the class.";
  const { single, concession, currency } = order;
  if (single === 0) return "The class has no single price: put it in first, or a single costs nothing.";
  const less = concession < single ? `, a concession ${money(concession, currency)}` : "";
  return `A single is ${money(single, currency)}${less}, from the prices of the class.`;
}

type BoxProps = {
  readonly text: string;
  readonly put: (text: string) => void;
  readonly problem: boolean;
};

function MatsBox({ text, put, problem }: BoxProps) {
  const id = useId();
  return (
    <FieldRow
      id={id}
      label="Mats for each date"
      help="As the class sheet answers for its hall; fewer if you like"
      unit="mats"
      problem={problem ? "Write a whole number of mats, 1 or more." : null}
    >
      <input
        id={id}
        className="field-box"
        type="text"
        inputMode="numeric"
        autoComplete="off"
        value={text}
        aria-describedby={problem ? `${id}-help ${id}-problem` : `${id}-help`}
        aria-invalid={problem || undefined}
        onChange={(event) => put(event.target.value)}
      />
    </FieldRow>
  );
}
