import type { Actor, KeptStream, RecordCommit, RecordStore } from "#app/ports";
import type { MadeAt } from "#core/notice";
import { bad, good, type Locale, plainWriter, problem, type Result } from "#core/words";
import { deskWith, type Setting } from "./desk.ts";
import type { Told } from "./doing.ts";
import { type DoAsk, doingOf } from "./doings/index.ts";
import { emptyShelf, fetchNeeded, fetchTogether, type Shelf } from "./shelf.ts";

/** An action that was read and waits for its turn. */
export type Job = Pick<MadeAt, "made" | "sentence"> & {
  readonly action: string;
  readonly by: Actor;
  readonly locale: Locale;
  readonly ask: DoAsk;
  readonly arrived: string;
};

type World = {
  readonly store: RecordStore;
  readonly seal: (practice: string, person: string, text: string) => string;
};

type Answer = Result<Told>;

/** How often an action is decided anew when another program was first. */
const MOST_TRIES = 20;

/**
 * Does those who waited, in their order: each is decided on what the one before left, and all are kept in one
 * transaction. Where that cannot be, because another program was first or an action comes again, they are done one
 * by one; each is answered for itself.
 */
export async function doJobs(
  world: World,
  practice: string,
  jobs: readonly Job[],
): Promise<readonly Answer[]> {
  const [first] = jobs;
  const several = first !== undefined && jobs.length > 1;
  const together = several ? await allTogether(world, practice, jobs, settingOf(first)) : undefined;
  if (together !== undefined) return together;
  const answers: Answer[] = [];
  // oxlint-disable-next-line no-await-in-loop -- one after another
  for (const job of jobs) answers.push(await oneAlone(world, practice, job));
  return answers;
}

/** All in one transaction, or undefined where they must be done one by one. */
async function allTogether(
  world: World,
  practice: string,
  jobs: readonly Job[],
  setting: Setting,
): Promise<readonly Answer[] | undefined> {
  const shelf = emptyShelf();
  const commits: RecordCommit[] = [];
  const answers: Answer[] = [];
  const asks = jobs.map(({ ask }) => ask);
  const read = await fetchTogether(shelf, world.store, practice, asks, setting);
  if (!read.ok) return jobs.map(() => read);
  for (const job of jobs) {
    // oxlint-disable-next-line no-await-in-loop -- each is decided on what the one before left
    const decided = await decide(world, practice, job, shelf);
    if (decided.ok) {
      commits.push(decided.value);
      leaveOn(shelf, decided.value);
    }
    // oxlint-disable-next-line no-await-in-loop -- as above
    answers.push(
      decided.ok ? good(toldOf(decided.value.answer)) : await orBefore(world, practice, job, decided),
    );
  }
  if (commits.length === 0) return answers;
  const kept = await world.store.appendAll(commits);
  // one of them used an id again: that is for it alone to hear
  if (!kept.ok)
    return kept.problems.some(({ code }) => code === "action-reused") ? undefined : jobs.map(() => kept);
  return kept.value === "done" ? answers : undefined;
}

async function oneAlone(world: World, practice: string, job: Job): Promise<Answer> {
  for (let tried = 0; tried < MOST_TRIES; tried += 1) {
    // oxlint-disable-next-line no-await-in-loop -- one try after another
    const decided = await decide(world, practice, job, emptyShelf());
    if (!decided.ok) return orBefore(world, practice, job, decided);
    // oxlint-disable-next-line no-await-in-loop -- as above
    const appended = await world.store.append(decided.value);
    if (!appended.ok) return appended;
    if (appended.value.outcome === "done") return good(toldOf(decided.value.answer));
    if (appended.value.outcome === "done before") return good(toldOf(appended.value.answer));
  }
  return bad(busy());
}

/** What is refused now may have been done before: then it is answered as it was then. */
async function orBefore(
  { store }: World,
  practice: string,
  { action, ask }: Job,
  refused: Extract<Answer, { ok: false }>,
): Promise<Answer> {
  const before = await store.answered(practice, action, JSON.stringify(ask));
  if (!before.ok) return before;
  return before.value === undefined ? refused : good(toldOf(before.value.answer));
}

async function decide(
  { store, seal }: World,
  practice: string,
  job: Job,
  shelf: Shelf,
): Promise<Result<RecordCommit>> {
  const { action, by, ask, made, arrived } = job;
  const setting = settingOf(job);
  const read = await fetchNeeded(shelf, store, practice, ask, setting);
  if (!read.ok) return read;
  const { desk, written } = deskWith([...shelf.streams.values()], shelf.asked, setting);
  const decided = doingOf(ask).decide(ask, desk);
  if (!decided.ok) return decided;
  const work = written();
  const sealed = work.sealed.map(({ person, text }) => ({
    person,
    text: text === null ? null : seal(practice, person, text),
  }));
  const commit = { practice, action, asked: JSON.stringify(ask), made, arrived, by };
  return good({ ...commit, ...work, sealed, answer: withClock(decided.value, job) });
}

function settingOf({ made, arrived, by, locale }: Job): Setting {
  return { made, arrived, by, writer: plainWriter(locale) };
}

/** A device's clock that is off is told with the answer. */
function withClock(told: Told, { sentence }: Job): Told {
  return sentence === "" ? told : { ...told, says: [...told.says, sentence] };
}

function leaveOn({ streams }: Shelf, commit: RecordCommit): void {
  for (const { stream, from, events, belongs, sort, state } of commit.streams) {
    const left: KeptStream = { stream, number: from + events.length, belongs, sort, state };
    streams.set(stream, left);
  }
}

function toldOf(answer: unknown): Told {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- only what was told here is kept as an answer
  return answer as Told;
}

function busy() {
  const says = "Others were writing the same session all the time.";
  return problem("record-busy", "action", says, "Nothing was changed. Do it again; it is done once only.");
}
