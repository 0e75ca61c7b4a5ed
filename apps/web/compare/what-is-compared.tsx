import type { ClassDocument } from "#core/class";
import { type Arrangement, arrangements, arrangementWords } from "#core/hall";
import type { ClassPart } from "../class-sheet/class-part.ts";
import { ChoiceField } from "../fields/choice-field.tsx";
import { DateField } from "../fields/date-field.tsx";
import { useFormField } from "../fields/form.tsx";
import { Rows } from "../fields/rows.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { weekdayChoices } from "./weekday-choices.ts";

/** Other times of the week, and the ways for the mats to stand, that are compared as well. */
export function WhatIsCompared({ document, change }: ClassPart) {
  return (
    <div>
      <OtherSlots document={document} change={change} />
      <Arrangements document={document} change={change} />
    </div>
  );
}

function OtherSlots({ document, change }: ClassPart) {
  const { planning, weekday, start } = document;
  const slots = planning?.slots ?? [];
  return (
    <Rows
      title="Other times of the week"
      path="planning.slots"
      compact
      rows={slots}
      fresh={() => ({ weekday: (weekday % 7) + 1, start })}
      add="Add a time"
      named={(index) => `the time ${index + 1}`}
      put={(rows) => change({ planning: { ...planning, slots: [...rows] } })}
      renderRow={(slot, put, path) => (
        <SlotFields slot={slot} put={put} path={path} own={{ weekday, start }} />
      )}
    />
  );
}

type Slot = NonNullable<NonNullable<ClassDocument["planning"]>["slots"]>[number];
type SlotProps = {
  readonly slot: Slot;
  readonly own: Slot;
  readonly put: (slot: Slot) => void;
  readonly path: string;
};

function SlotFields({ slot, own, put, path }: SlotProps) {
  const start = useFormField(`${path}.start`);
  const same = slot.weekday === own.weekday && slot.start === own.start;
  return (
    <>
      <ChoiceField
        label="Day"
        value={String(slot.weekday)}
        choices={weekdayChoices}
        onChange={(day) => put({ ...slot, weekday: Number(day) })}
      />
      <DateField
        type="time"
        label="Begins"
        value={slot.start}
        put={(time) => put({ ...slot, start: time })}
        problem={same ? "That is the class’s own time." : (start.problem?.says ?? null)}
      />
    </>
  );
}

/** Without a tick as the class or the hall has them. */
function Arrangements({ document, change }: ClassPart) {
  const { planning } = document;
  const { arrangements: chosen = [], ...others } = planning ?? {};
  const tick = (arrangement: Arrangement, wanted: boolean) => {
    const next = arrangements.filter((it) => (it === arrangement ? wanted : chosen.includes(it)));
    change({ planning: next.length === 0 ? others : { ...others, arrangements: next } });
  };
  return (
    <fieldset className="fields">
      <legend>How the mats lie</legend>
      <p className="small soft">
        Without a tick as the class or the hall has them; ticked ways are compared with one another.
      </p>
      {arrangements.map((it) => (
        <TickField
          key={it}
          label={capital(arrangementWords[it])}
          checked={chosen.includes(it)}
          put={(wanted) => tick(it, wanted)}
        />
      ))}
    </fieldset>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
