/*
 * Pictures of plans, in this browser's own database on this device. Nothing here, and nothing else, sends one anywhere.
 */
const DATABASE = "hallful-pictures";
const SHELF = "pictures";

/* Where the device refuses, they are here for as long as the page lives. */
const unkept = new Map<string, Blob>();

/** False where the device refuses to keep it. */
export async function keepPicture(id: string, picture: Blob): Promise<boolean> {
  unkept.set(id, picture);
  const kept = await onShelf("readwrite", (shelf) => shelf.put(picture, id));
  if (kept !== null) unkept.delete(id);
  return kept !== null;
}

/** Null where this device has none. */
export async function keptPicture(id: string): Promise<Blob | null> {
  const here = unkept.get(id);
  if (here !== undefined) return here;
  const read = await onShelf("readonly", (shelf) => shelf.get(id));
  return read !== null && read.value instanceof Blob ? read.value : null;
}

export async function dropPicture(id: string): Promise<void> {
  unkept.delete(id);
  await onShelf("readwrite", (shelf) => shelf.delete(id));
}

type Answer = { readonly value: unknown };
type Asked = { readonly result: unknown };

/** Null where the browser has no database or does not let us use it. */
function onShelf(mode: IDBTransactionMode, ask: (shelf: IDBObjectStore) => Asked): Promise<Answer | null> {
  return new Promise((done) => {
    const give = () => done(null);
    try {
      const opening = indexedDB.open(DATABASE, 1);
      opening.addEventListener("upgradeneeded", () => opening.result.createObjectStore(SHELF));
      opening.addEventListener("error", give);
      opening.addEventListener("blocked", give);
      opening.addEventListener("success", () => {
        const database = opening.result;
        const doing = database.transaction(SHELF, mode);
        const asked = ask(doing.objectStore(SHELF));
        doing.addEventListener("complete", () => {
          done({ value: asked.result });
          database.close();
        });
        doing.addEventListener("abort", give);
        doing.addEventListener("error", give);
      });
    } catch {
      give();
    }
  });
}
