import type { KeptStream, RecordStore, StreamName } from "#app/ports";
import { good, type Result } from "#core/words";
import { deskWith, type Setting } from "./desk.ts";
import { type DoAsk, doingOf } from "./doings/index.ts";

/** Streams as they were read, or as actions decided since leave them; a name that is not there was asked for too. */
export type Shelf = {
  readonly streams: Map<StreamName, KeptStream>;
  readonly asked: Set<StreamName>;
};

export function emptyShelf(): Shelf {
  return { streams: new Map(), asked: new Set() };
}

/** Reads what an action needs, and what that shows to be needed, until nothing new is; what is there is not read. */
export async function fetchNeeded(
  shelf: Shelf,
  store: RecordStore,
  practice: string,
  ask: DoAsk,
  setting: Setting,
): Promise<Result<null>> {
  const doing = doingOf(ask);
  for (;;) {
    const known = deskWith([...shelf.streams.values()], shelf.asked, setting).desk;
    const needs = doing.needs(ask, known);
    if (needs.every((name) => shelf.asked.has(name))) return good(null);
    // oxlint-disable-next-line no-await-in-loop -- what is read says what is to be read next
    const read = await fetch(shelf, store, practice, needs);
    if (!read.ok) return read;
  }
}

/** Reads in one go what several actions need by what they ask for alone, before the first of them is decided. */
export function fetchTogether(
  shelf: Shelf,
  store: RecordStore,
  practice: string,
  asks: readonly DoAsk[],
  setting: Setting,
): Promise<Result<null>> {
  const nothing = deskWith([], new Set(), setting).desk;
  const needs = asks.flatMap((ask) => doingOf(ask).needs(ask, nothing));
  return fetch(shelf, store, practice, needs);
}

async function fetch(
  shelf: Shelf,
  store: RecordStore,
  practice: string,
  names: readonly StreamName[],
): Promise<Result<null>> {
  const missing = [...new Set(names)].filter((name) => !shelf.asked.has(name));
  const more = await store.streams(practice, missing);
  if (!more.ok) return more;
  for (const name of missing) shelf.asked.add(name);
  for (const it of more.value) shelf.streams.set(it.stream, it);
  return good(null);
}
