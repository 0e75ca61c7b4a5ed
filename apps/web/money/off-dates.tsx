import { DateField } from "../fields/date-field.tsx";
import { Rows } from "../fields/rows.tsx";
import type { Work } from "./plan-edit.ts";

type Props = {
  readonly weekly: NonNullable<Work["weekly"]>;
  readonly put: (off: readonly string[]) => void;
};

/** Dates on which it is not taught: closures, her holidays. */
export function OffDates({ weekly: { off, from }, put }: Props) {
  return (
    <Rows<string>
      title="Dates without a session"
      path="off"
      rows={off}
      fresh={() => off.at(-1) ?? from}
      add="Add a date without a session"
      named={(index) => `date ${index + 1} without a session`}
      put={put}
      renderRow={(date, putRow) => (
        <DateField label={`No session on, ${off.indexOf(date) + 1}`} value={date} put={putRow} />
      )}
    />
  );
}
