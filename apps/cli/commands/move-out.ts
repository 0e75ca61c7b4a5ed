import { resolve } from "node:path";
import { good } from "#core/words";
import type { Command } from "../command.ts";
import { dataOptions, withStore } from "../open-data.ts";

export const moveOutCommand: Command = {
  name: "move-out",
  summary: "write everything into one file of text, to move elsewhere",
  words: ["FILE"],
  options: { replace: { says: "replace FILE if it is there already" }, ...dataOptions },
  details: `
For moving between a data file and a PostgreSQL database, which DATABASE_URL
names; hallful move-in FILE takes it in there.`,
  run: async (given, world) => {
    const { moveOut } = await import("#adapters/store");
    const [name = ""] = given.words;
    const to = resolve(world.folder, name);
    const done = await withStore(given, world, (store) =>
      moveOut({ store, to, replace: given.flags.has("replace") }),
    );
    if (!done.ok) return done;
    return good({ text: `Wrote ${done.value} records to ${to}.\n`, json: { file: to, records: done.value } });
  },
};
