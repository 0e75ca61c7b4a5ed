// How soon it is known who is still coming, and how well the fit is, beside a plain fit that works out every person by
// herself with a library's gamma function and climbs step by step.
// npm run bench -- still-coming [--json] [--people 2357] [--runs 9] [--no-peer]
import { parseArgs } from "node:util";
import { comingPeople } from "#testing";
import { machineNow } from "./machine.ts";
import { comingInWords } from "./still-coming-in-words.ts";
import { measureComing } from "./still-coming-measure.ts";

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    people: { type: "string" },
    runs: { type: "string", default: "9" },
    "no-peer": { type: "boolean", default: false },
  },
});

// the paper's number of people, and ten thousand
const counts = values.people === undefined ? [2357, 10_000] : [Number(values.people)];
// the paper's four, its twelve weeks of newcomers and its 39 weeks of watching
const truth = { r: 0.243, alpha: 4.414, a: 0.793, b: 2.426 };
const records = counts.map((count) => {
  console.error(`${count} people`);
  const people = comingPeople(truth, count, { newFor: 84, until: 272 }, 20_261_125);
  return measureComing(people, Number(values.runs), !values["no-peer"] && count < 5000);
});
const record = { bench: "still-coming", machine: machineNow(), runs: Number(values.runs), records };
console.log(values.json ? JSON.stringify(record, null, 2) : comingInWords(record));
