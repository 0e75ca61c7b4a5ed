import { resolve } from "node:path";
import { good } from "#core/words";
import type { Command } from "../command.ts";
import { dataOptions, withNewStore } from "../open-data.ts";

export const moveInCommand: Command = {
  name: "move-in",
  summary: "take in what hallful move-out wrote, all of it or nothing",
  words: ["FILE"],
  options: dataOptions,
  details: `
The data file is made when it is not there. A practice that is there already
stops it, and nothing is changed then.`,
  run: async (given, world) => {
    const { moveIn } = await import("#adapters/store");
    const [name = ""] = given.words;
    const from = resolve(world.folder, name);
    const done = await withNewStore(given, world, (store) => moveIn({ store, from }));
    if (!done.ok) return done;
    const text = `Took in ${done.value} records from ${from}.\n`;
    return good({ text, json: { file: from, records: done.value } });
  },
};
