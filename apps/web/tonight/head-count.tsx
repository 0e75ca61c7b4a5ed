import { useState } from "react";
import { countSentence, headsExpected } from "./heads-expected.ts";
import type { RegisterHere } from "./register-here.ts";
import { nameOf, type RegisterRow } from "./register-rows.ts";
import { SheetDialog } from "./sheet-dialog.tsx";

type Props = {
  readonly here: RegisterHere;
  readonly rows: readonly RegisterRow[];
  readonly close: () => void;
};

/** How many should stand outside, who they are, and how many were counted. */
export function HeadCount({ here, rows, close }: Props) {
  const { id, session, record, run } = here;
  const [others, setOthers] = useState(0);
  const expected = headsExpected(session, others);
  const [counted, setCounted] = useState<number | null>(session.heads);
  const names = [
    ...rows.filter(({ place }) => place.state === "attended").map(({ name }) => name),
    ...session.cameOver.map(({ person }) => nameOf(record.look, person)),
  ];
  const heads = counted ?? expected;
  const keep = () => {
    if (run({ kind: "count heads", session: id, heads }, `${heads} heads counted`)) close();
  };
  return (
    <SheetDialog title="Heads in the room" close={close}>
      <p className="heads-number">
        <strong>{expected}</strong> <span>should be here, you among them</span>
      </p>
      <p className="small">{names.length === 0 ? "Nobody is marked as here yet." : names.join(" · ")}</p>
      <Stepper label="Helpers and guests not on the register" value={others} put={setOthers} />
      <Stepper label="Counted" value={heads} put={setCounted} />
      <output>
        {counted === null ? "Count them, then set the number." : countSentence(expected, counted)}
      </output>
      <button type="button" className="button button-main reach" onClick={keep}>
        Keep: {heads} counted
      </button>
    </SheetDialog>
  );
}

type StepperProps = {
  readonly label: string;
  readonly value: number;
  readonly put: (value: number) => void;
};

/** A number that a wet thumb can change. */
function Stepper({ label, value, put }: StepperProps) {
  return (
    <fieldset className="fields stepper">
      <legend>{label}</legend>
      <div className="row">
        <button
          type="button"
          className="button reach"
          aria-label={`${label}: one less`}
          disabled={value < 1}
          onClick={() => put(value - 1)}
        >
          −
        </button>
        <output className="stepper-value">{value}</output>
        <button
          type="button"
          className="button reach"
          aria-label={`${label}: one more`}
          onClick={() => put(value + 1)}
        >
          +
        </button>
      </div>
    </fieldset>
  );
}
