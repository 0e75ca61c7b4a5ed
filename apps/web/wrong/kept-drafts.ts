import type { Draft } from "#app/record";
import { keepOnDevice, readOnDevice } from "../drafts/on-device.ts";
import type { WrongHere } from "./wrong-here.ts";

/** Messages, each to one person by id, and the notice for the door. No word of health is ever in them. */
export type Drafted = { readonly messages: readonly Draft[]; readonly notice: string };

const keyOf = ({ practiceId, id }: WrongHere) => `drafted/${practiceId}/${id}`;

/** Kept on this device: once the session is cancelled, who had a place is not listed again. */
export function keepDrafts(here: WrongHere, drafts: Drafted): void {
  keepOnDevice(keyOf(here), drafts);
}

export function keptDrafts(here: WrongHere): Drafted | null {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- written above by ourselves
  return readOnDevice(keyOf(here)) as Drafted | null;
}
