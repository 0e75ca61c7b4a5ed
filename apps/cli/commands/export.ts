import type { Kept, PracticeWhole } from "#app/ports";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { Command } from "../command.ts";
import { nearest } from "../nearest.ts";
import { practiceOptions, withPractice } from "../open-data.ts";
import { readKind } from "../read-kind.ts";

export const exportCommand: Command = {
  name: "export",
  summary: "a hall or a class out of the data file, as JSON",
  words: ["hall|class", "NAME-OR-ID"],
  options: practiceOptions,
  details: `
Prints the document to standard output, as hallful schema hall and hallful
schema class describe it: hallful export hall "Tithe Barn Hall" > barn.json`,
  run: async (given, world) => {
    const [kindWord = "", name = ""] = given.words;
    const kind = readKind(kindWord);
    if (!kind.ok) return kind;
    return withPractice(given, world, async (_store, whole) => {
      const found = findRecord(recordsOf(whole, kind.value), kind.value, name);
      if (!found.ok) return found;
      const document = { format: `hallful/${kind.value}@1`, ...found.value.document };
      return good({ text: `${JSON.stringify(document, null, 2)}\n`, json: document });
    });
  },
};

type Record = Kept<HallDocument | ClassDocument>;

function recordsOf(whole: PracticeWhole, kind: "hall" | "class"): readonly Record[] {
  return kind === "hall" ? whole.halls : whole.classes;
}

/** By id, else by name, whatever the case of its letters. */
function findRecord(records: readonly Record[], kind: string, name: string): Result<Record> {
  const byId = records.find((it) => it.id === name);
  if (byId !== undefined) return good(byId);
  const [only, another] = records.filter((it) => folded(it.document.name) === folded(name));
  if (only === undefined) return bad(missing(records, kind, name));
  return another === undefined ? good(only) : bad(notUnique(kind, name, [only.id, another.id]));
}

function folded(name: string): string {
  return name.trim().toLowerCase();
}

function missing(records: readonly Record[], kind: string, name: string): Problem {
  const names = records.flatMap((it) => [it.document.name, it.id]);
  const near = nearest(name, names);
  const there = records.map((it) => it.id).join(", ");
  const next =
    near === undefined ? `There are: ${there === "" ? "none yet" : there}.` : `Did you mean ${near}?`;
  return problem("record-missing", "NAME-OR-ID", `There is no ${kind} “${name.slice(0, 60)}”.`, next);
}

function notUnique(kind: string, name: string, ids: readonly string[]): Problem {
  const says = `More than one ${kind} is called “${name.slice(0, 60)}”.`;
  return problem(
    "record-not-unique",
    "NAME-OR-ID",
    says,
    `Give the id of the one you mean: ${ids.join(" or ")}.`,
  );
}
