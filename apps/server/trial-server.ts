import { join } from "node:path";
import { openSqliteStore, type WholeStore } from "#adapters/store";
import { keySealer } from "#adapters/seal";
import { problemsContract } from "#app/ports";
import { temporaryFolder } from "#testing";
import { expect, onTestFinished } from "vitest";
import { makeServer, type ServerParts } from "./make-server.ts";

const NOW = "2026-11-25T09:45:00.000Z";

/** A server over an empty data file, asked without a network; it fails the test that meets a fault of ours. */
export async function trialServer(parts: Partial<ServerParts> = {}) {
  const store = parts.store ?? (await trialStore());
  const web = join(temporaryFolder(), "nothing-built");
  const app = await makeServer({
    store,
    sealer: keySealer(new Uint8Array(32).fill(7)),
    now: () => NOW,
    web,
    version: "1.2.3",
    log: (fault) => expect.fail(String(fault)),
    ...parts,
  });
  onTestFinished(() => app.close());
  return {
    app,
    get: (url: string, headers: Record<string, string> = {}) => app.inject({ method: "GET", url, headers }),
    post: (url: string, payload: object) => app.inject({ method: "POST", url, payload }),
    put: (url: string, payload: object) => app.inject({ method: "PUT", url, payload }),
    del: (url: string, payload: object) => app.inject({ method: "DELETE", url, payload }),
  };
}

/** The same with the demo of Marlsford as the practice "oriel". */
export async function trialDemo() {
  const made = await trialServer();
  await made.post("/api/practices", { action: "action-0001", id: "oriel", start: "demo-marlsford" });
  return made;
}

export async function trialStore(): Promise<WholeStore> {
  const file = join(temporaryFolder(), "practice.sqlite");
  const store = await openSqliteStore({ file, now: () => NOW });
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  onTestFinished(() => store.value.close());
  return store.value;
}

/** The codes of the problems in an answer, which must be problems and nothing else. */
export function codesOf(answer: { json: () => unknown }): readonly string[] {
  return problemsContract.parse(answer.json()).problems.map((it) => it.code);
}
