import type { ClassDocument } from "#core/class";
import { useId } from "react";
import type { Listed } from "../drafts/use-practice.ts";
import { ChoiceField } from "../fields/choice-field.tsx";
import { FieldRow } from "../fields/field-row.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { nameOr } from "../places/hall-name.ts";
import type { ComingForm } from "./coming-choices.ts";

type Props = {
  readonly form: ComingForm;
  readonly classes: readonly Listed<ClassDocument>[];
  readonly put: (form: ComingForm) => void;
};

/** What the answer rests on beside the file. */
export function ComingFields({ form, classes, put }: Props) {
  return (
    <fieldset className="fields holds-fields">
      <legend>What it rests on</legend>
      <ChoiceField
        label="Weeks off"
        help="a week in which the class did not run is no absence"
        value={form.classId ?? ""}
        choices={[
          { value: "", label: "none: every week counts" },
          ...classes.map(({ id, document }) => ({
            value: id,
            label: `as in ${nameOr(document.name, "a class without a name")}`,
          })),
        ]}
        onChange={(value) => put({ ...form, classId: value === "" ? null : value })}
      />
      <div className="field">
        <TickField
          label="Take every week in which nobody came for a week off"
          checked={form.emptyWeeksClosed}
          put={(emptyWeeksClosed) => put({ ...form, emptyWeeksClosed })}
        />
      </div>
      <WeeksField
        label="Not seen for"
        help="after so long a person is listed; a guess"
        weeks={[2, 3, 4, 6, 8, 12]}
        value={form.notSeenFor}
        put={(notSeenFor) => put({ ...form, notSeenFor })}
      />
      <WeeksField
        label="Look ahead"
        weeks={[4, 8, 12, 26, 52]}
        value={form.ahead}
        put={(ahead) => put({ ...form, ahead })}
      />
      <ChoiceField
        label="Count until"
        value={form.until}
        choices={[
          { value: "last visit", label: "the last visit" },
          { value: "today", label: "today" },
        ]}
        onChange={(value) => put({ ...form, until: value === "today" ? "today" : "last visit" })}
      />
      <NewSince value={form.newSince} put={(newSince) => put({ ...form, newSince })} />
      <ChoiceField
        label="People come"
        help="to a weekly class (bg-bb), or to any of several (bg-nbd)"
        value={form.model}
        choices={[
          { value: "bg-bb", label: "once a week at most" },
          { value: "bg-nbd", label: "on any day they like" },
        ]}
        onChange={(value) => put({ ...form, model: value === "bg-nbd" ? "bg-nbd" : "bg-bb" })}
      />
    </fieldset>
  );
}

type WeeksProps = {
  readonly label: string;
  readonly help?: string;
  readonly weeks: readonly number[];
  readonly value: number;
  readonly put: (weeks: number) => void;
};

function WeeksField({ label, help, weeks, value, put }: WeeksProps) {
  return (
    <ChoiceField
      label={label}
      {...(help === undefined ? {} : { help })}
      value={String(value)}
      choices={weeks.map((it) => ({ value: String(it), label: `${it} teaching weeks` }))}
      onChange={(chosen) => put(Number(chosen))}
    />
  );
}

type SinceProps = { readonly value: string | null; readonly put: (date: string | null) => void };

/** A date or none: who was there when the records began may have come long before. */
function NewSince({ value, put }: SinceProps) {
  const id = useId();
  return (
    <FieldRow
      id={id}
      label="New is who was first seen from"
      help="empty: everybody; who was there when the records begin may have come long before"
    >
      <input
        id={id}
        className="field-box"
        type="date"
        value={value ?? ""}
        aria-describedby={`${id}-help`}
        onChange={(event) => put(event.target.value === "" ? null : event.target.value)}
      />
    </FieldRow>
  );
}
