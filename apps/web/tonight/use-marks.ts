import type { PlaceState } from "#core/roll";
import { placeIn } from "#core/roll";
import { useCallback, useState } from "react";
import { keepOnDevice, readOnDevice } from "../drafts/on-device.ts";
import type { RegisterHere } from "./register-here.ts";

export type MarkState = Extract<PlaceState, "held" | "attended" | "not come">;

/** A mark that can be taken back. */
export type Marked = {
  readonly place: string;
  readonly name: string;
  readonly from: MarkState;
  readonly to: MarkState;
};

/** So many marks can be taken back one after another: a full register. */
const MOST_UNDONE = 40;

export const markWords: Readonly<Record<MarkState, string>> = {
  held: "not marked",
  attended: "here",
  "not come": "did not come",
};

/** Marks names, and takes the last marks back; what can be taken back is kept on the device with the marks. */
export function useMarks({ practiceId, id, session, run, say }: RegisterHere) {
  const key = `marks/${practiceId}/${id}`;
  const [marks, setMarks] = useState<readonly Marked[]>(() => readMarks(key));
  const put = useCallback(
    (next: readonly Marked[]) => {
      keepOnDevice(key, next);
      setMarks(next);
    },
    [key],
  );
  const tell = useCallback(
    (place: string, as: MarkState, name: string) =>
      run({ kind: "mark", session: id, place, as }, `${name}: ${markWords[as]}`),
    [run, id],
  );
  const mark = useCallback(
    (marked: Marked) => {
      if (!tell(marked.place, marked.to, marked.name)) return;
      put([...readMarks(key), marked].slice(-MOST_UNDONE));
      say([`${marked.name}: ${markWords[marked.to]}.`]);
    },
    [tell, put, say, key],
  );
  // only what still stands as it was marked: the rest was changed since, here or elsewhere
  const standing = marks.filter(({ place, to }) => placeIn(session, place)?.state === to);
  const last = standing.at(-1);
  const undo = () => {
    if (last === undefined || !tell(last.place, last.from, last.name)) return;
    put(standing.slice(0, -1));
    say([`Taken back. ${last.name}: ${markWords[last.from]}.`]);
  };
  return { mark, undo, last };
}

function readMarks(key: string): readonly Marked[] {
  const read = readOnDevice(key);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- written above by ourselves
  return Array.isArray(read) ? (read as readonly Marked[]) : [];
}
