/** What a shelf answered. */
type Answer = { readonly value: unknown };
type Ask = (shelf: IDBObjectStore) => { readonly result: unknown };

/** A shelf in this browser's own database on this device, for what is too large for `keepOnDevice`. */
export function deviceShelf(database: string, shelf: string) {
  return (mode: IDBTransactionMode, ask: Ask) => onShelf(database, shelf, mode, ask);
}

/** Null where the browser has no database or does not let us use it. */
function onShelf(name: string, shelf: string, mode: IDBTransactionMode, ask: Ask): Promise<Answer | null> {
  return new Promise((done) => {
    const give = () => done(null);
    try {
      const opening = indexedDB.open(name, 1);
      opening.addEventListener("upgradeneeded", () => opening.result.createObjectStore(shelf));
      opening.addEventListener("error", give);
      opening.addEventListener("blocked", give);
      opening.addEventListener("success", () => {
        const database = opening.result;
        const doing = database.transaction(shelf, mode);
        const asked = ask(doing.objectStore(shelf));
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
