import type { Result } from "#core/words";
import type { DataPlace } from "./data-place.ts";
import { openSqliteStore } from "./open-sqlite-store.ts";
import { openPostgresStore } from "./postgres/open-postgres-store.ts";
import type { WholeStore } from "./sql-store.ts";

/** Opens the place that was named, whichever it is. `now` gives ISO 8601 instants, UTC. */
export function openStore(place: DataPlace, now: () => string): Promise<Result<WholeStore>> {
  switch (place.kind) {
    case "file":
      return openSqliteStore({ file: place.file, now });
    case "database":
      return openPostgresStore({ url: place.url, now });
  }
}
