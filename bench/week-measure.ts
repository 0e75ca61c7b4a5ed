import { bestWeek, countWeek, readWeek, tradeOff, weekProgramme, weekSearch } from "#core/week";
import type { Solver } from "#kernels/search";
import { drawing, randomWeek } from "#testing";
import type { Clock } from "./clock.ts";
import { askCommandLine, type CommandLineSolver, type PeerAnswer } from "./command-line-solver.ts";

export type WeekRecord = {
  readonly seed: number;
  /** all in the late afternoon and evening, of five days */
  readonly crowded: boolean;
  readonly candidates: number;
  readonly places: number;
  readonly columns: number;
  readonly rows: number;
  /** coins a year */
  readonly value: number | null;
  readonly bound: number | null;
  readonly proven: boolean;
  /** what the checker found wrong, and whether it counts the same value */
  readonly faults: number;
  readonly countedSame: boolean;
  readonly classes: number;
  readonly msToProof: number;
  readonly msCurves: number;
  readonly points: { readonly classes: number; readonly evenings: number };
  readonly peers: readonly (PeerAnswer & { readonly name: string; readonly sameValue: boolean })[];
};

export type WeekBench = {
  readonly candidates: number;
  readonly places: number;
  readonly peers: readonly CommandLineSolver[];
  readonly peerSeconds: number;
};

/** One random week: reading and the model count in the time to proof, both curves in that of the curves. */
export function measureWeek(
  bench: WeekBench,
  { seed, crowded }: { readonly seed: number; readonly crowded: boolean },
  solver: Solver,
  clock: Clock,
): WeekRecord {
  const { candidates, places } = bench;
  const document = randomWeek({ candidates, places, days: crowded ? 5 : 7, crowded, draw: drawing(seed) });
  const began = clock();
  const week = readWeek(document);
  if (!week.ok) throw new Error(JSON.stringify(week.problems));
  const search = weekSearch(week.value, solver);
  const found = bestWeek(search, { goal: "leaves" });
  const msToProof = Math.round(clock() - began);
  const curvesBegan = clock();
  const [classes, evenings] = [tradeOff(search, "classes"), tradeOff(search, "evenings")];
  const msCurves = Math.round(clock() - curvesBegan);
  const { programme } = weekProgramme(week.value, search.arcs, { goal: "leaves" });
  const value = found.kind === "found" ? found.value : null;
  const bound = found.kind === "found" ? found.bound : null;
  const counted = countWeek(week.value, found.kind === "found" ? found.chosen : []);
  return {
    seed,
    crowded,
    candidates,
    places,
    columns: programme.columns.length,
    rows: programme.rows.length,
    value,
    bound,
    proven: value !== null && value === bound,
    faults: counted.faults.length,
    countedSame: counted.earns - counted.wishes === value,
    classes: counted.classes,
    msToProof,
    msCurves,
    points: { classes: classes.length, evenings: evenings.length },
    peers: bench.peers.map((peer) => {
      const answer = askCommandLine(peer, programme, bench.peerSeconds);
      const sameValue = answer.value !== null && value !== null && Math.abs(answer.value - value) < 0.5;
      return { name: peer.name, ...answer, sameValue };
    }),
  };
}
