import type { DataPlace, WholeStore } from "#adapters/store";
import type { PracticeWhole, Store } from "#app/ports";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { Given, Option } from "./command.ts";
import { nearest } from "./nearest.ts";
import type { World } from "./world.ts";

/** The options of every command that works on a data file. */
export const dataOptions: Readonly<Record<string, Option>> = {
  data: { value: "FILE", says: "the data file; else HALLFUL_DATA or DATABASE_URL, else data/hallful.sqlite" },
};

export const practiceOptions: Readonly<Record<string, Option>> = {
  practice: { value: "ID", says: "which practice; needed only when there are several" },
  ...dataOptions,
};

/** The adapters come in only here, so that sums need no database. Problem: "data-unclear". */
async function placeOf(given: Given, world: World): Promise<Result<DataPlace>> {
  const { dataPlace } = await import("#adapters/store");
  return dataPlace(given.values["data"], world.environment, world.folder);
}

/** For what only a file has. Problems: "data-unclear", "data-in-database". */
export async function dataFile(given: Given, world: World): Promise<Result<string>> {
  const place = await placeOf(given, world);
  if (!place.ok) return place;
  return place.value.kind === "file" ? good(place.value.file) : bad(inDatabase());
}

/**
 * Opens the data, does the work and closes it again whatever happens. A file must be there already.
 * Problems: those of the store, "data-file-missing".
 */
export async function withStore<Value>(
  given: Given,
  world: World,
  work: (store: WholeStore) => Promise<Result<Value>>,
): Promise<Result<Value>> {
  const { checkFile } = await import("#adapters/store");
  const place = await placeOf(given, world);
  if (!place.ok) return place;
  const sound = place.value.kind === "file" ? checkFile(place.value.file) : good(null);
  return sound.ok ? withNewStore(given, world, work) : sound;
}

/** The same with a file that is made when it is not there. */
export async function withNewStore<Value>(
  given: Given,
  world: World,
  work: (store: WholeStore) => Promise<Result<Value>>,
): Promise<Result<Value>> {
  const { openStore } = await import("#adapters/store");
  const place = await placeOf(given, world);
  if (!place.ok) return place;
  const store = await openStore(place.value, world.now);
  if (!store.ok) return store;
  try {
    return await work(store.value);
  } finally {
    await store.value.close();
  }
}

/**
 * Does the work on the practice that is meant.
 * Problems: those of withStore, "practice-none", "practice-unclear", "practice-unknown".
 */
export function withPractice<Value>(
  given: Given,
  world: World,
  work: (store: Store, whole: PracticeWhole) => Promise<Result<Value>>,
): Promise<Result<Value>> {
  return withStore(given, world, async (store) => {
    const id = await choosePractice(store, given.values["practice"]);
    if (!id.ok) return id;
    const whole = await store.whole(id.value);
    return whole.ok ? work(store, whole.value) : whole;
  });
}

async function choosePractice(store: Store, asked: string | undefined): Promise<Result<string>> {
  const all = await store.practices();
  if (!all.ok) return all;
  const ids = all.value.map((it) => it.id);
  if (asked !== undefined) return ids.includes(asked) ? good(asked) : bad(unknown(asked, ids));
  const [only, another] = ids;
  if (only === undefined) return bad(none());
  return another === undefined ? good(only) : bad(unclear(ids));
}

function none(): Problem {
  const says = "There is no practice in the data file yet.";
  return problem("practice-none", "--practice", says, "Start Hallful with npm start and open one first.");
}

function unclear(ids: readonly string[]): Problem {
  const says = `There are ${ids.length} practices: ${ids.join(", ")}.`;
  return problem("practice-unclear", "--practice", says, `Name the one you mean: --practice ${ids[0]}`);
}

function unknown(asked: string, ids: readonly string[]): Problem {
  const near = nearest(asked, ids);
  const next = near === undefined ? `There are: ${ids.join(", ") || "none yet"}.` : `Did you mean ${near}?`;
  return problem("practice-unknown", "--practice", `There is no practice “${asked.slice(0, 60)}”.`, next);
}

function inDatabase(): Problem {
  const says = "DATABASE_URL names a PostgreSQL database, and this is only done with a data file.";
  const next = "Use hallful move-out, or the backups of the server; --data names a file.";
  return problem("data-in-database", "DATABASE_URL", says, next);
}
