import type { Tables } from "../tables.ts";
import type { WholeStore } from "../sql-store.ts";

type Moved<Table extends keyof Tables> = Readonly<Tables[Table]>;

export type KeptRows = { readonly [Table in keyof Tables]: readonly Moved<Table>[] };

/** Everything that a store holds, table by table, as it would be moved elsewhere. */
export async function keptRows(store: WholeStore): Promise<KeptRows> {
  let text = "";
  const done = await store.everythingOut(async (part) => {
    text += part;
  });
  if (!done.ok) throw new Error(JSON.stringify(done.problems));
  const tables: Record<string, unknown[]> = {};
  for (const line of text.trim().split("\n")) {
    for (const [table, row] of Object.entries(JSON.parse(line))) (tables[table] ??= []).push(row);
  }
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the store wrote the tables
  return { stream: [], event: [], posting: [], action: [], sealed: [], ...tables } as unknown as KeptRows;
}
