#!/usr/bin/env node
import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { setImmediate as nextTurn } from "node:timers/promises";
import { loadSolver } from "#kernels/search";
import { run } from "./run.ts";

// a reader that has seen enough, like head, is no problem
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  watched: process.stderr.isTTY ? process.stderr.columns : null,
  input: standardInput,
  environment: process.env,
  folder: process.cwd(),
  now: () => new Date().toISOString(),
  clock: () => performance.now(),
  onInterrupt,
  pause: nextTurn,
  solver: () => loadSolver().catch(() => null),
  newId: randomUUID,
  version: version(),
});

/** A second Ctrl-C ends at once, as it would without this. */
function onInterrupt(heard: () => void): () => void {
  process.once("SIGINT", heard);
  return () => process.off("SIGINT", heard);
}

async function standardInput(): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  for await (const part of process.stdin) parts.push(part);
  return Buffer.concat(parts);
}

/** package.json stands two folders above both the source and the built file. */
function version(): string {
  const manifest: unknown = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8"));
  const known = typeof manifest === "object" && manifest !== null && "version" in manifest;
  return known ? String(manifest.version) : "unknown";
}
