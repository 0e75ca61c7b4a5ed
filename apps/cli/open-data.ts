import { resolve } from "node:path";
import type { PracticeWhole, Store } from "#app/ports";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { Given, Option } from "./command.ts";
import { nearest } from "./nearest.ts";
import type { World } from "./world.ts";

/** The options of every command that works on a data file. */
export const dataOptions: Readonly<Record<string, Option>> = {
  data: { value: "FILE", says: "the data file; else HALLFUL_DATA, else data/hallful.sqlite" },
};

export const practiceOptions: Readonly<Record<string, Option>> = {
  practice: { value: "ID", says: "which practice; needed only when there are several" },
  ...dataOptions,
};

/** The adapters come in only here, so that sums need no database. */
export async function dataFile(given: Given, world: World): Promise<string> {
  const { dataFileName } = await import("#adapters/store");
  return resolve(world.folder, dataFileName(given.values["data"], world.environment));
}

/**
 * Opens the data file, does the work on the practice that is meant, and closes it again whatever happens.
 * Problems: those of the store, "data-file-missing", "practice-none", "practice-unclear", "practice-unknown".
 */
export async function withPractice<Value>(
  given: Given,
  world: World,
  work: (store: Store, whole: PracticeWhole) => Promise<Result<Value>>,
): Promise<Result<Value>> {
  const { checkFile, openSqliteStore } = await import("#adapters/store");
  const file = await dataFile(given, world);
  const sound = checkFile(file);
  if (!sound.ok) return sound;
  const store = await openSqliteStore({ file, now: world.now });
  if (!store.ok) return store;
  try {
    const id = await choosePractice(store.value, given.values["practice"]);
    if (!id.ok) return id;
    const whole = await store.value.whole(id.value);
    return whole.ok ? await work(store.value, whole.value) : whole;
  } finally {
    await store.value.close();
  }
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
