import { resolve } from "node:path";
import { good } from "#core/words";
import type { Command } from "../command.ts";
import { dataFile, dataOptions } from "../open-data.ts";

export const restore: Command = {
  name: "restore",
  summary: "put a backup in the place of the data file",
  words: ["FILE"],
  options: dataOptions,
  details: `
The backup is looked at first. The data file that was there is kept beside it
under a dated name. Stop Hallful before.`,
  run: async (given, world) => {
    const { restoreData } = await import("#adapters/store");
    const [name = ""] = given.words;
    const file = await dataFile(given, world);
    if (!file.ok) return file;
    const data = file.value;
    const from = resolve(world.folder, name);
    const done = restoreData({ from, data, now: world.now() });
    if (!done.ok) return done;
    const kept = done.value === null ? "" : `What was there is kept as ${done.value}.\n`;
    return good({ text: `Restored ${data} from ${from}.\n${kept}`, json: { data, from, kept: done.value } });
  },
};
