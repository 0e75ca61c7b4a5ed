import { importClass, importHall } from "#app/actions";
import { good } from "#core/words";
import type { Command } from "../command.ts";
import { practiceOptions, withPractice } from "../open-data.ts";
import { readInput } from "../read-input.ts";
import { readKind } from "../read-kind.ts";

export const importCommand: Command = {
  name: "import",
  summary: "a hall or a class into the data file, from JSON",
  words: ["hall|class", "FILE.json"],
  options: {
    id: { value: "ID", says: "the id to keep it under; else made from its name" },
    replace: { says: "replace the one that has the id already" },
    ...practiceOptions,
  },
  details: `
FILE.json is a document as hallful schema hall or hallful schema class describes
it; - reads standard input. It is looked at in every part before it is kept.`,
  run: async (given, world) => {
    const [kindWord = "", name = "-"] = given.words;
    const kind = readKind(kindWord);
    if (!kind.ok) return kind;
    const input = await readInput(name, world);
    if (!input.ok) return input;
    return withPractice(given, world, async (store, whole) => {
      const take = kind.value === "hall" ? importHall : importClass;
      const done = await take(store, {
        action: world.newId(),
        practice: whole.practice.id,
        id: given.values["id"],
        document: input.value,
        replace: given.flags.has("replace"),
      });
      if (!done.ok) return done;
      const { id, version, document, unused } = done.value;
      const text = `Kept the ${kind.value} “${document.name}” as ${id}, version ${version}.\n`;
      return good({ text, json: { kind: kind.value, id, version }, unused });
    });
  },
};
