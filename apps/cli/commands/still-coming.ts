import { comingAnswer, comingJson, type Period, staysAnswer, staysJson } from "#core/outlook";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { Answer, Command, Given } from "../command.ts";
import { nearest } from "../nearest.ts";
import { tableOptions } from "../read-table-file.ts";
import { readVisitsFile, type VisitsFile } from "../read-visits-file.ts";
import { readWhole } from "../read-whole.ts";
import { comingText, staysText } from "../still-coming-text.ts";

export const stillComing: Command = {
  name: "still-coming",
  summary: "who is still coming, from a file of visits",
  words: ["TRANSACTIONS.csv"],
  options: {
    person: { value: "COLUMN", says: "the column that says who, by its name or its number from 1" },
    surname: { value: "COLUMN", says: "a second column of the name, where it stands in two" },
    amount: { value: "COLUMN", says: "the column of amounts; a row below nought is no visit" },
    ...tableOptions,
    until: { value: "DATE", says: "the last day that counts; else that of the last visit" },
    closed: { value: "FROM..UNTIL", says: "when the class did not run; several with commas between" },
    "empty-weeks-closed": { says: "take each week in which nobody came for one without a class" },
    model: { value: "MODEL", says: "bg-nbd, the usual one, bg-bb or beta-geometric" },
    ahead: { value: "WEEKS", says: "teaching weeks to look ahead, 12 unless told" },
    "not-seen-for": { value: "WEEKS", says: "list who was not seen for so long, 4 unless told" },
    "new-since": { value: "DATE", says: "who was first seen on this day or later was new then" },
    every: { value: "PERIOD", says: "week, month or year: how beta-geometric counts" },
    "gone-after": { value: "PERIODS", says: "not seen for so many is gone, for beta-geometric" },
  },
  details: `
TRANSACTIONS.csv has a visit in each row: who, and on which day; - reads
standard input. Any separator and encoding will do, and dates are written as
they are. Rows that cannot be used are listed with their number and why.
bg-nbd is for people who come as it pleases them; bg-bb counts each teaching
week as one chance to come; beta-geometric is for what is renewed.`,
  run: async (given, world) => {
    const model = given.values["model"] ?? "bg-nbd";
    const problems = modelProblems(given, model);
    if (problems.length > 0) return bad(...problems);
    const [name = "-"] = given.words;
    const file = await readVisitsFile(name, given, world);
    if (!file.ok) return file;
    return model === "beta-geometric" ? stays(given, file.value) : coming(given, file.value, model);
  },
};

const MODELS = ["bg-nbd", "bg-bb", "beta-geometric"];

/** Options that only one of the models has a use for. */
const ONLY_STAYS = ["every", "gone-after"];
const ONLY_COMING = ["not-seen-for"];

function modelProblems({ values }: Given, model: string): readonly Problem[] {
  if (!MODELS.includes(model)) {
    const near = nearest(model, MODELS);
    const next = near === undefined ? `There are: ${MODELS.join(", ")}.` : `Did you mean ${near}?`;
    return [problem("model-unknown", "--model", `There is no model “${model.slice(0, 40)}”.`, next)];
  }
  const unused = model === "beta-geometric" ? ONLY_COMING : ONLY_STAYS;
  const other = model === "beta-geometric" ? "for bg-nbd and bg-bb" : "for beta-geometric";
  return unused
    .filter((name) => values[name] !== undefined)
    .map((name) =>
      problem(
        "option-other-model",
        `--${name}`,
        `--${name} is ${other}.`,
        "Leave it out, or change the model.",
      ),
    );
}

function coming(given: Given, file: VisitsFile, model: string): Result<Answer> {
  const ahead = readWhole(given, "ahead", 12);
  const notSeenFor = readWhole(given, "not-seen-for", 4);
  if (!ahead.ok || !notSeenFor.ok) return allBad(ahead, notSeenFor);
  const answer = comingAnswer({
    ...file.records,
    ahead: ahead.value,
    notSeenFor: notSeenFor.value,
    model: model === "bg-bb" ? "bg-bb" : "bg-nbd",
  });
  if (!answer.ok) return answer;
  return good({
    text: comingText(answer.value, file),
    json: { ...comingJson(answer.value), read: file.read, notUsed: file.notUsed },
  });
}

const PERIODS: readonly Period[] = ["week", "month", "year"];

function stays(given: Given, file: VisitsFile): Result<Answer> {
  const period = PERIODS.find((it) => it === (given.values["every"] ?? "week"));
  if (period === undefined) {
    const says = `There is no period “${(given.values["every"] ?? "").slice(0, 40)}”.`;
    return bad(problem("period-unknown", "--every", says, `There are: ${PERIODS.join(", ")}.`));
  }
  const ahead = readWhole(given, "ahead", 12);
  // a month or a year without is the end; a week or two may be a cold
  const goneAfter = readWhole(given, "gone-after", period === "week" ? 4 : 1);
  if (!ahead.ok || !goneAfter.ok) return allBad(ahead, goneAfter);
  const answer = staysAnswer({ ...file.records, period, ahead: ahead.value, goneAfter: goneAfter.value });
  if (!answer.ok) return answer;
  return good({
    text: staysText(answer.value, file),
    json: { ...staysJson(answer.value), read: file.read, notUsed: file.notUsed },
  });
}

function allBad(...results: readonly Result<unknown>[]): Result<never> {
  return bad(...results.flatMap((it) => (it.ok ? [] : it.problems)));
}
