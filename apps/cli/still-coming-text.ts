import { type ComingAnswer, type PersonComing, type Stays, type StaysAnswer } from "#core/outlook";
import { chanceText } from "#core/price";
import type { VisitsFile } from "./read-visits-file.ts";
import { rowsText } from "./rows-text.ts";
import { textTable } from "./text-table.ts";

// more than a screen is a file's work
const MOST_SHOWN = 40;

/** The answer first, then people by name, the fit, and how the file was read. */
export function comingText(
  { sentences, caution, coming, newcomers }: ComingAnswer,
  file: VisitsFile,
): string {
  const { fit, people, notSeen, notSeenFor, ahead } = coming;
  const unseen =
    notSeen.length === 0
      ? ""
      : `\nNot seen for ${notSeenFor} teaching weeks or more\n${namesText(notSeen.map((it) => it.person))}`;
  return [
    ...sentences.map((it) => `${it}\n`),
    `\n${caution}\n`,
    unseen,
    `\nThe people, by name\n${peopleTable(people, ahead)}${more(people.length)}`,
    fit === null ? "" : `  ${BETWEEN}\n`,
    newcomers.curve.length === 0 ? "" : `\nHow long newcomers stay\n${curveTable(newcomers)}`,
    fit === null ? "" : `\nThe fit\n${fitTable(fit.model, fit.fitted)}`,
    readText(file),
  ].join("");
}

export function staysText({ sentences, stays, people, ahead }: StaysAnswer, file: VisitsFile): string {
  const rows = people
    .slice(0, MOST_SHOWN)
    .map((it) => [it.person, String(it.stayed), it.stillThere ? it.expectedPeriods.toFixed(2) : "stopped"]);
  const expected = stays.expected.map((share, at) => [String(at + 1).padStart(4), chanceText(share)]);
  return [
    ...sentences.map((it) => `${it}\n`),
    `\nThe people, by name\n${textTable([["", `${stays.period}s stayed`, `of the next ${ahead}`], ...rows])}${more(people.length)}`,
    stays.curve.length === 0 ? "" : `\nHow long people stay, as seen\n${curveTable(stays)}`,
    `\nHow long people stay, by the fit\n${textTable([[stays.period, "still there"], ...expected])}`,
    `\nThe fit\n${fitTable("beta-geometric", stays.fitted)}`,
    readText(file),
  ].join("");
}

const BETWEEN =
  "Expected between: where the fit puts it four times of five; what one person then does varies more.";

function peopleTable(people: readonly PersonComing[], ahead: number): string {
  const rows = people
    .slice(0, MOST_SHOWN)
    .map((it) => [
      it.person,
      String(it.visits),
      String(it.weeksSince),
      it.stillComing === null ? "-" : chanceText(it.stillComing.value),
      it.comesAgain === null ? "-" : chanceText(it.comesAgain.value),
      it.expectedVisits === null ? "-" : it.expectedVisits.value.toFixed(1),
      it.expectedVisits === null
        ? ""
        : `${it.expectedVisits.low.toFixed(1)} to ${it.expectedVisits.high.toFixed(1)}`,
    ]);
  const head = [
    "",
    "visits",
    "weeks ago",
    "still coming",
    "comes again",
    `expected in ${ahead}`,
    "expected between",
  ];
  return textTable([head, ...rows]);
}

function more(people: number): string {
  return people > MOST_SHOWN ? `  … and ${people - MOST_SHOWN} more; --json has everybody\n` : "";
}

function namesText(names: readonly string[]): string {
  return `${names
    .slice(0, MOST_SHOWN)
    .map((name) => `  ${name}\n`)
    .join("")}${more(names.length)}`;
}

function curveTable({ curve, period }: Stays): string {
  const rows = curve.map((it) => [
    String(it.period).padStart(4),
    `${it.stopped} of ${it.atRisk} stopped`,
    chanceText(it.value),
    `${chanceText(it.low)} to ${chanceText(it.high)}`,
  ]);
  return textTable([[period, "", "still there", "four times of five"], ...rows.slice(0, MOST_SHOWN)]);
}

type AnyFit = {
  readonly parameters: Readonly<Record<string, number>>;
  readonly logLikelihood: number;
  readonly settled: boolean;
};

function fitTable(model: string, { parameters, logLikelihood, settled }: AnyFit): string {
  const rows = Object.entries(parameters).map(([name, value]) => [
    name,
    String(Number(value.toPrecision(4))),
  ]);
  const told = settled ? [] : [["settled", "no: a guess"]];
  return textTable([["model", model], ...rows, ["log-likelihood", logLikelihood.toFixed(2)], ...told]);
}

function readText({ read, notUsed }: VisitsFile): string {
  const { writtenTwoWays } = read;
  const names = writtenTwoWays.slice(0, 10).join(", ");
  const told = writtenTwoWays.length === 0 ? [] : [`Written in more than one way: ${names}.`];
  return rowsText(read, notUsed, told);
}
