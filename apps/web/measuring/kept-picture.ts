import { deviceShelf } from "../drafts/device-shelf.ts";

/*
 * Pictures of plans, in this browser's own database on this device. Nothing here, and nothing else, sends one anywhere.
 */
const shelf = deviceShelf("hallful-pictures", "pictures");

/* Where the device refuses, they are here for as long as the page lives. */
const unkept = new Map<string, Blob>();

/** False where the device refuses to keep it. */
export async function keepPicture(id: string, picture: Blob): Promise<boolean> {
  unkept.set(id, picture);
  const kept = await shelf("readwrite", (it) => it.put(picture, id));
  if (kept !== null) unkept.delete(id);
  return kept !== null;
}

/** Null where this device has none. */
export async function keptPicture(id: string): Promise<Blob | null> {
  const here = unkept.get(id);
  if (here !== undefined) return here;
  const read = await shelf("readonly", (it) => it.get(id));
  return read !== null && read.value instanceof Blob ? read.value : null;
}

export async function dropPicture(id: string): Promise<void> {
  unkept.delete(id);
  await shelf("readwrite", (it) => it.delete(id));
}
