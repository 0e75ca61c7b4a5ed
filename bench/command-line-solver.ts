import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Programme } from "#kernels/search";
import { programmeAsLp } from "./programme-as-lp.ts";

/** An integer-programme solver of the system, found by its name on the path. */
export type CommandLineSolver = {
  readonly name: "glpsol" | "cbc" | "highs";
  readonly version: string;
};

export type PeerAnswer = {
  /** null where none could be read from what it printed, or the time was over */
  readonly value: number | null;
  /** of the whole process: starting, reading the file, solving */
  readonly ms: number;
};

const NAMES = ["highs", "cbc", "glpsol"] as const;

/** All of highs, cbc and glpsol that there are; none where none is installed. */
export function commandLineSolvers(): readonly CommandLineSolver[] {
  return NAMES.flatMap((name) => {
    const words = name === "cbc" ? ["-quit"] : ["--version"];
    const run = spawnSync(name, words, { encoding: "utf8", timeout: 10_000 });
    if (run.error !== undefined) return [];
    return [{ name, version: /\d+\.\d+(\.\d+)?/.exec(run.stdout)?.[0] ?? "unknown" }];
  });
}

/** Gives the same programme to the solver as a file, to proof. */
export function askCommandLine(
  { name }: CommandLineSolver,
  programme: Programme,
  seconds: number,
): PeerAnswer {
  const folder = mkdtempSync(join(tmpdir(), "hallful-bench-"));
  const [model, out] = [join(folder, "week.lp"), join(folder, "answer.txt")];
  try {
    writeFileSync(model, programmeAsLp(programme));
    const began = performance.now();
    const run = spawnSync(name, wordsFor(name, model, out), { encoding: "utf8", timeout: seconds * 1000 });
    const ms = Math.round(performance.now() - began);
    return { value: run.status === 0 ? valueFrom(name, run.stdout, out) : null, ms };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function wordsFor(name: CommandLineSolver["name"], model: string, out: string): readonly string[] {
  switch (name) {
    case "highs":
      return ["--model_file", model, "--solution_file", out];
    case "cbc":
      return [model, "ratioGap", "0", "allowableGap", "0", "solve", "solution", out];
    case "glpsol":
      return ["--lp", model, "--cuts", "-o", out];
  }
}

/** The value as each prints it; some print a greatest sum as the least of its opposite. */
function valueFrom(name: CommandLineSolver["name"], printed: string, out: string): number | null {
  const found =
    name === "highs"
      ? /Primal bound\s+([-\d.e+]+)/.exec(printed)
      : name === "cbc"
        ? /Optimal.*objective value\s+([-\d.e+]+)/.exec(readFileSync(out, "utf8"))
        : /Status:\s+INTEGER OPTIMAL[\s\S]*Objective:\s+gain = ([-\d.e+]+)/.exec(readFileSync(out, "utf8"));
  return found === null ? null : Math.abs(Number(found[1]));
}
