import { resolve } from "node:path";
import { good } from "#core/words";
import type { Command } from "../command.ts";
import { dataFile, dataOptions } from "../open-data.ts";

export const backup: Command = {
  name: "backup",
  summary: "copy everything into one file, also while Hallful runs",
  words: ["FILE"],
  options: { replace: { says: "replace FILE if it is there already" }, ...dataOptions },
  details: `
Keep backups on another disk than the data. hallful restore FILE puts one back.`,
  run: async (given, world) => {
    const { backupData } = await import("#adapters/store");
    const [name = ""] = given.words;
    const file = await dataFile(given, world);
    if (!file.ok) return file;
    const data = file.value;
    const to = resolve(world.folder, name);
    const done = backupData({ data, to, replace: given.flags.has("replace") });
    if (!done.ok) return done;
    const text = `Backed up ${data} to ${to} (${done.value} bytes).\n`;
    return good({ text, json: { data, backup: to, bytes: done.value } });
  },
};
