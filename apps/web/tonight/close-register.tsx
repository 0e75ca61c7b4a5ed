import type { SessionState } from "#core/roll";
import type { RegisterHere } from "./register-here.ts";
import type { RegisterRow } from "./register-rows.ts";
import { SheetDialog } from "./sheet-dialog.tsx";

type Props = {
  readonly here: RegisterHere;
  readonly rows: readonly RegisterRow[];
  readonly close: () => void;
};

/** Closing the register, with all that follows said before it is done. */
export function CloseRegister({ here, rows, close }: Props) {
  const { id, session, run } = here;
  const done = () => {
    if (run({ kind: "close register", session: id }, `Close the register of ${session.name}`)) close();
  };
  return (
    <SheetDialog title="Close the register" close={close}>
      <ul className="stack-close">
        {whatFollows(here, rows).map((it) => (
          <li key={it}>{it}</li>
        ))}
      </ul>
      <button type="button" className="button button-main reach" onClick={done}>
        Close the register
      </button>
    </SheetDialog>
  );
}

function whatFollows({ session, writer }: RegisterHere, rows: readonly RegisterRow[]): readonly string[] {
  const left = rows.filter(({ place }) => place.state === "held");
  const passes = left.filter(({ place }) => place.pass !== null).length;
  const owing = rows.reduce((sum, { owes }) => sum + owes, 0);
  return [
    left.length === 0
      ? "Everybody is marked; nobody’s mark changes."
      : `Marked as not come, and charged as if they had: ${left.map(({ name }) => name).join(", ")}.`,
    ...(passes === 0 ? [] : [`${passes} of them ${passes === 1 ? "loses" : "lose"} a class off a pass.`]),
    ...(owing === 0 ? [] : [`${writer.money(owing, session.currency)} stays to be paid.`]),
    ...waitingFollows(session),
    "A single mark can still be put right afterwards.",
  ];
}

function waitingFollows({ waiting }: SessionState): readonly string[] {
  return waiting.length === 0
    ? []
    : ["Whoever still waits is not offered this date any more; nothing is charged."];
}
