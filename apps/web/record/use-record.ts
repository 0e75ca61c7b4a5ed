import type { Locale } from "#core/words";
import { useEffect, useSyncExternalStore } from "react";
import { type Lookup, lookup } from "./lookup.ts";
import { type RecordHere, type RecordKeeper, recordKeeperOf } from "./record-keeper.ts";
import { outboxKey, recordWorld } from "./record-world.ts";

/** How often what others did is asked for while the page is looked at, in milliseconds. */
const READ_AGAIN = 60_000;

export type RecordOpen = RecordHere & { readonly keeper: RecordKeeper; readonly look: Lookup };

// one for each practice for as long as the page lives: leaving a place loses nothing that is on its way
const keepers = new Map<string, { readonly keeper: RecordKeeper; locale: Locale }>();

/** The record of a practice on this device; it begins to read and to send when it is first asked for. */
export function recordKeeper(practice: string, locale: Locale): RecordKeeper {
  const known = keepers.get(practice);
  if (known !== undefined) {
    known.locale = locale;
    return known.keeper;
  }
  const keeper = recordKeeperOf(recordWorld(practice), () => keepers.get(practice)?.locale ?? locale);
  keepers.set(practice, { keeper, locale });
  listen(practice, keeper);
  void keeper.sync();
  return keeper;
}

function listen(practice: string, keeper: RecordKeeper): void {
  globalThis.addEventListener("online", () => void keeper.sync(true));
  globalThis.addEventListener("offline", keeper.lost);
  // what was done on a page that asks the server itself, like that of a person
  window.addEventListener("hallful-record-changed", () => void keeper.sync(true));
  window.addEventListener("storage", ({ key }) => {
    if (key?.endsWith(outboxKey(practice)) === true) keeper.elsewhere();
  });
  // the browser asks before it closes a page whose work is nowhere else
  window.addEventListener("beforeunload", (event) => {
    const { outbox, onDevice } = keeper.read();
    if (outbox.queue.length > 0 && !onDevice) event.preventDefault();
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") void keeper.sync();
  });
}

/** The record with everything that was done here already done. */
export function useRecord(practice: string, locale: Locale): RecordOpen {
  const keeper = recordKeeper(practice, locale);
  const here = useSyncExternalStore(keeper.subscribe, keeper.read);
  useEffect(() => {
    const timer = setInterval(() => {
      if (document.visibilityState === "visible") void keeper.sync();
    }, READ_AGAIN);
    return () => clearInterval(timer);
  }, [keeper]);
  return { ...here, keeper, look: lookup(here.streams) };
}
