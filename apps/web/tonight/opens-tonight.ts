import type { StreamsAnswer } from "#app/ports";
import type { SessionState } from "#core/roll";
import { ask } from "../api/ask.ts";
import { lookup } from "../record/lookup.ts";
import { readSeen } from "../record/record-world.ts";

const HOUR = 3_600_000;
/** A server that takes longer is not waited for: what is on the device decides, in milliseconds. */
const PATIENCE = 1500;

/** Whether a practice opens on tonight's register: a session begins within a day, or began within three hours. */
export async function opensTonight(practice: string): Promise<boolean> {
  const now = Date.now();
  const told = await Promise.race([askServer(practice, now), silence()]);
  if (told !== null) return told;
  const seen = await readSeen(practice);
  return lookup(seen?.streams ?? []).sessions.some(({ state }) => isTonight(state, now));
}

async function askServer(practice: string, now: number): Promise<boolean | null> {
  const from = new Date(now - 3 * HOUR).toISOString();
  const until = new Date(now + 24 * HOUR).toISOString();
  const path = `/api/practices/${encodeURIComponent(practice)}/record/evenings?from=${from}&until=${until}`;
  const answer = await ask(path);
  if (!answer.ok) return null;
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server, same contract
  const { streams } = answer.value as StreamsAnswer;
  return lookup(streams).sessions.some(({ state }) => isTonight(state, now));
}

function isTonight({ starts, cancelled }: SessionState, now: number): boolean {
  const ahead = Date.parse(starts) - now;
  return cancelled === null && ahead > -3 * HOUR && ahead <= 24 * HOUR;
}

function silence(): Promise<null> {
  return new Promise((done) => {
    setTimeout(() => done(null), PATIENCE);
  });
}
