// How long it takes in Chromium from a tap on a name to the frame that shows the mark, on a full register.
// npm run bench -- marks [--json] [--people 20] [--known 200] [--rounds 3]; needs the built pages (npm run build).
import { parseArgs } from "node:util";
import { machineNow } from "./machine.ts";
import { measureMarks } from "./marks-measure.ts";
import { openMarksPage } from "./marks-page.ts";

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    people: { type: "string", default: "20" },
    known: { type: "string", default: "200" },
    rounds: { type: "string", default: "3" },
  },
});

/** A mark is to be seen in under 100 ms. */
const AIM_MS = 100;

const people = Number(values.people);
const opened = await openMarksPage(people, Number(values.known));
try {
  const signal = await measureMarks(opened, Number(values.rounds), true);
  const noSignal = await measureMarks(opened, Number(values.rounds), false);
  const run = { people, known: Number(values.known), aimMs: AIM_MS, machine: machineNow(), signal, noSignal };
  console.log(values.json ? JSON.stringify(run, null, 2) : inWords(run));
} finally {
  await opened.close();
}

type Run = {
  readonly people: number;
  readonly known: number;
  readonly machine: { readonly load: number; readonly cores: number };
  readonly signal: Awaited<ReturnType<typeof measureMarks>>;
  readonly noSignal: Awaited<ReturnType<typeof measureMarks>>;
};

function inWords({ people, known, machine, signal, noSignal }: Run): string {
  const line = (name: string, it: Run["signal"]) =>
    `${name}: ${it.marks} marks, median ${it.medianMs.toFixed(1)} ms, worst ${it.worstMs.toFixed(1)} ms`;
  return [
    `A register of ${people}, ${known} people known; load ${machine.load} on ${machine.cores} cores`,
    line("with signal", signal),
    line("without signal", noSignal),
    `aim: under ${AIM_MS} ms`,
  ].join("\n");
}
