import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { bad, good, problem, type Result } from "#core/words";
import { type Draft, openDraft, type Sending } from "./draft.ts";
import { keeperOf } from "./keeper.ts";

const silent = problem("server-silent", "", "The server does not answer.", "Try again.");

/** A server of one document that can be silent: a save may arrive although its answer is lost. */
function serverOf(version: number, document: string) {
  const done = new Map<string, number>();
  const server = { version, document, silent: false, loseAnswers: false, deleted: false, asked: 0 };
  const send = ({ action, from, document: sent }: Sending<string>): Result<{ version: number }> => {
    server.asked += 1;
    if (server.silent) return bad(silent);
    if (server.deleted && from > 0)
      return bad(problem("changed-elsewhere", "", "It was changed.", "Choose."));
    const before = done.get(action);
    if (before === undefined && !server.deleted && from !== server.version) {
      return bad(problem("changed-elsewhere", "", "It was changed.", "Choose."));
    }
    if (before === undefined) {
      server.version += 1;
      server.document = sent;
      done.set(action, server.version);
    }
    return server.loseAnswers ? bad(silent) : good({ version: done.get(action) ?? server.version });
  };
  return { server, send };
}

function open(version = 1, document = "old") {
  const { server, send } = serverOf(version, document);
  const kept: { draft: Draft<string> | null } = { draft: null };
  let ids = 0;
  const keeper = keeperOf<string>(
    {
      send: (sending) => Promise.resolve(send(sending)),
      fetch: () =>
        Promise.resolve(good(server.deleted ? null : { version: server.version, document: server.document })),
      keep: (draft) => {
        kept.draft = draft;
        return true;
      },
      drop: () => {
        kept.draft = null;
      },
      saved: () => undefined,
      newId: () => `a${(ids += 1)}`,
      now: () => "2027-01-11T18:02:00Z",
    },
    openDraft(version, document),
  );
  return { keeper, server, kept };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

test("several keys make one save, a moment after the last", async () => {
  const { keeper, server } = open();
  for (const text of ["o", "on", "one"]) keeper.change(() => text);
  await vi.advanceTimersByTimeAsync(2000);
  expect(server).toMatchObject({ document: "one", asked: 1 });
});

test("a change is on the device before it is sent, and leaves it once the server has it", async () => {
  const { keeper, kept } = open();
  keeper.change(() => "new");
  expect(kept.draft?.document).toBe("new");
  await vi.advanceTimersByTimeAsync(2000);
  expect(kept.draft).toBeNull();
});

test("a silent server is tried again, and what was typed meanwhile arrives too", async () => {
  const { keeper, server } = open();
  server.silent = true;
  keeper.change(() => "new");
  await vi.advanceTimersByTimeAsync(2000);
  expect(keeper.read().state.kind).toBe("kept");
  keeper.change(() => "newer");
  server.silent = false;
  await vi.advanceTimersByTimeAsync(60_000);
  expect(server.document).toBe("newer");
  expect(keeper.read().state.kind).toBe("saved");
});

test("a save whose answer was lost is not taken for somebody else's change", async () => {
  const { keeper, server } = open();
  server.loseAnswers = true;
  keeper.change(() => "new");
  await vi.advanceTimersByTimeAsync(2000);
  expect(server.document).toBe("new");
  server.loseAnswers = false;
  keeper.change(() => "newer");
  await vi.advanceTimersByTimeAsync(60_000);
  expect(server).toMatchObject({ document: "newer", version: 3 });
});

test("after a clash either text can be kept", async () => {
  for (const [mine, stays] of [
    [true, "mine"],
    [false, "theirs"],
  ] as const) {
    const { keeper, server } = open();
    server.version = 5;
    server.document = "theirs";
    keeper.change(() => "mine");
    await vi.advanceTimersByTimeAsync(2000);
    expect(keeper.read().state.kind).toBe("clash");
    await keeper.resolve(mine);
    expect([server.document, keeper.read().document]).toEqual([stays, stays]);
  }
});

test("what was deleted elsewhere stays deleted, or comes back as it is on the page", async () => {
  const { keeper, server, kept } = open();
  server.deleted = true;
  keeper.change(() => "mine");
  await vi.advanceTimersByTimeAsync(2000);
  expect((await keeper.resolve(false)).map((it) => it.code)).toEqual(["deleted-elsewhere"]);
  expect(kept.draft).toBeNull();
  expect(await keeper.resolve(true)).toEqual([]);
  expect(server.document).toBe("mine");
});
