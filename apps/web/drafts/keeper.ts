import { type Problem, problem, type Result } from "#core/words";
import {
  acknowledged,
  changeDocument,
  changeTyped,
  dropTyped,
  type Draft,
  heardVersion,
  keepMine,
  notSaved,
  openDraft,
  type Sending,
  startSending,
} from "./draft.ts";

/** The moment that she stops typing before a save goes out, in milliseconds. */
const PAUSE = 700;
/** How long a silent server is left alone before the next try, in milliseconds. */
const NEXT_TRY = 15_000;

/** What a keeper needs of the world: where to send, where to keep on the device, ids and the time. */
export type KeeperWorld<Document> = {
  readonly send: (sending: Sending<Document>) => Promise<Result<{ readonly version: number }>>;
  readonly fetch: () => Promise<Result<{ readonly version: number; readonly document: Document } | null>>;
  /** false where the device refuses to keep it: no room, or storage shut off */
  readonly keep: (draft: Draft<Document>) => boolean;
  readonly drop: () => void;
  readonly saved: (version: number, document: Document) => void;
  readonly newId: () => string;
  readonly now: () => string;
};

export type Keeper<Document> = ReturnType<typeof keeperOf<Document>>;

/** Holds one open document, keeps it on the device at every change and saves it a moment later. */
export function keeperOf<Document>(world: KeeperWorld<Document>, opened: Draft<Document>) {
  let draft = opened;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let onDevice = true;
  const listeners = new Set<() => void>();

  const put = (next: Draft<Document>) => {
    if (next === draft) return;
    draft = next;
    const clean = !draft.unsent && draft.sending === null && Object.keys(draft.typed).length === 0;
    if (clean) world.drop();
    else onDevice = world.keep(draft);
    for (const listener of listeners) listener();
  };
  const later = (milliseconds: number) => {
    clearTimeout(timer);
    timer = setTimeout(() => void send(), milliseconds);
  };
  const send = async () => {
    clearTimeout(timer);
    const started = startSending(draft, world.newId());
    if (started?.sending == null) return;
    put(started);
    const { sending } = started;
    const answer = await world.send(sending);
    if (answer.ok) {
      put(acknowledged(draft, answer.value.version, world.now()));
      world.saved(answer.value.version, sending.document);
    } else put(notSaved(draft, answer.problems));
    if (draft.state.kind === "waiting") later(0);
    if (draft.state.kind === "kept") later(NEXT_TRY);
  };
  const resolve = async (mine: boolean): Promise<readonly Problem[]> => {
    const answer = await world.fetch();
    if (!answer.ok) return answer.problems;
    const theirs = answer.value;
    if (mine) {
      put(keepMine(draft, theirs?.version ?? 0));
      await send();
      return [];
    }
    if (theirs === null) {
      world.drop();
      return [deletedElsewhere];
    }
    put(openDraft(theirs.version, theirs.document));
    world.saved(theirs.version, theirs.document);
    return [];
  };

  return {
    read: () => draft,
    /** whether the last change that is not saved is at least on the device */
    onDevice: () => onDevice,
    subscribe: (listener: () => void) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    change: (recipe: (document: Document) => Document) => {
      put(changeDocument(draft, recipe(draft.document)));
      if (draft.state.kind === "waiting") later(PAUSE);
    },
    type: (path: string, text: string | null) => put(changeTyped(draft, path, text)),
    dropTyped: (start: string) => put(dropTyped(draft, start)),
    heard: (version: number, document: Document) => put(heardVersion(draft, version, document)),
    /** sends now what is not saved yet; also the retry */
    flush: send,
    resolve,
    stop: () => clearTimeout(timer),
  };
}

const deletedElsewhere = problem(
  "deleted-elsewhere",
  "",
  "The other one was deleted.",
  "Leave this page to let it go, or keep what is on this page to have it again.",
);
