import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium } from "playwright-core";
import { chromiumPath, quietly } from "./chromium-here.ts";

export type MarksPage = {
  readonly browser: Browser;
  readonly address: string;
  readonly close: () => Promise<void>;
};

const PRACTICE = "/api/practices/marks";

/** The built server with one evening an hour from now, so many people in it of so many known, and a browser. */
export async function openMarksPage(people: number, known: number): Promise<MarksPage> {
  const folder = mkdtempSync(join(tmpdir(), "hallful-marks-"));
  const port = await freePort();
  const words = ["dist/server/hallful.mjs", "--port", String(port), "--data", join(folder, "marks.sqlite")];
  const server = spawn(process.execPath, words, { stdio: ["ignore", "ignore", "inherit"] });
  const start = `http://127.0.0.1:${port}`;
  await answering(start);
  await fill(start, people, known);
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: quietly });
  return {
    browser,
    address: `${start}/practice/marks/tonight`,
    close: async () => {
      await browser.close();
      server.kill("SIGTERM");
      await new Promise((ended) => server.once("exit", ended));
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function fill(start: string, people: number, known: number): Promise<void> {
  await post(`${start}/api/practices`, { action: "begin-0001", id: "marks", start: "demo-marlsford" });
  const starts = new Date(Date.now() + 3_600_000).toISOString();
  const date = starts.slice(0, 10);
  const session = `tuesday-evening.${date}`;
  const act = (action: string, what: object) => post(`${start}${PRACTICE}/record`, { action, do: what });
  await act("open-00001", {
    kind: "open sessions",
    class: "tuesday-evening",
    name: "Tuesday evening",
    sessions: [{ id: session, date, starts }],
    zone: "Europe/London",
    minutes: 75,
    hall: "tithe-barn-hall",
    capacity: people,
    posted: 60,
    currency: "GBP",
    single: 950,
    concession: 750,
    notice: { kind: "elapsed", hours: 24 },
    firstLateWaived: true,
  });
  for (let each = 0; each < known; each += 1) {
    const contact = { name: `Person ${String(each).padStart(3, "0")}` };
    await act(`meet-${each}-00001`, { kind: "meet person", person: `p-${each}`, contact });
    if (each >= people) continue;
    const place = { place: `pl-${each}`, person: `p-${each}`, how: "single" };
    await act(`take-${each}-00001`, { kind: "take place", session, people: [place] });
  }
}

async function post(address: string, body: object): Promise<void> {
  const headers = { "content-type": "application/json" };
  const answer = await fetch(address, { method: "POST", headers, body: JSON.stringify(body) });
  if (!answer.ok) throw new Error(`${address}: ${await answer.text()}`);
}

async function answering(start: string): Promise<void> {
  for (let tries = 0; tries < 200; tries += 1) {
    const answer = await fetch(`${start}/api/health`).catch(() => undefined);
    if (answer?.ok === true) return;
    await new Promise((wait) => setTimeout(wait, 50));
  }
  throw new Error("the server did not answer within 10 s");
}

function freePort(): Promise<number> {
  return new Promise((done, fail) => {
    const probe = createServer();
    probe.once("error", fail);
    probe.listen(0, "127.0.0.1", () => {
      const at = probe.address();
      probe.close(() => (at !== null && typeof at === "object" ? done(at.port) : fail(new Error("no port"))));
    });
  });
}
