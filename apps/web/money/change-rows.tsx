import { DateField } from "../fields/date-field.tsx";
import { Rows } from "../fields/rows.tsx";
import { BandFields } from "./band-fields.tsx";
import type { Work } from "./plan-edit.ts";

type Change = Work["changes"][number];
type Props = {
  readonly path: string;
  readonly rows: readonly Change[];
  /** the first day, and what a session brings now: where a new row begins */
  readonly from: string;
  readonly middle: string;
  readonly put: (rows: readonly Change[]) => void;
};

/** What a session brings from later days on: a class that grows, a rise of the pay. */
export function ChangeRows({ path, rows, from, middle, put }: Props) {
  return (
    <Rows<Change>
      title="What a session brings later"
      path={path}
      rows={rows}
      fresh={() => ({ from: rows.at(-1)?.from ?? from, perSession: middle })}
      add="Add what it brings from a later day on"
      named={(index) => `what it brings later, ${index + 1}`}
      put={put}
      renderRow={(row, putRow, at) => (
        <>
          <DateField
            label={`From, ${rows.indexOf(row) + 1}`}
            value={row.from}
            put={(value) => putRow({ ...row, from: value })}
          />
          <BandFields
            path={`${at}.perSession`}
            label={`A session then, ${rows.indexOf(row) + 1}`}
            per="a session"
            value={row.perSession}
            put={(perSession) => putRow({ ...row, perSession })}
          />
        </>
      )}
    />
  );
}
