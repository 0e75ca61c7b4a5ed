import {
  type Actor,
  actors,
  type KeptEvent,
  type KeptStream,
  type ListOrder,
  type StreamName,
  streamKinds,
} from "#app/ports";
import { good, type Result, togetherInOrder } from "#core/words";
import type { Kysely } from "kysely";
import type { Tables } from "../tables.ts";
import { readJson } from "./read-json.ts";

type Database = Kysely<Tables>;

/** Names asked for in one statement; SQLite binds at most 32,766 values. */
const NAMES = 1000;

const MOST_OF_LIST = 1000;

/** Those that are there, in the order asked; names asked for twice come twice. */
export async function readStreams(
  database: Database,
  practice: string,
  names: readonly StreamName[],
): Promise<Result<readonly KeptStream[]>> {
  const found = new Map<string, Tables["stream"]>();
  for (let start = 0; start < names.length; start += NAMES) {
    // oxlint-disable-next-line no-await-in-loop -- rarely more than one
    const rows = await database
      .selectFrom("stream")
      .selectAll()
      .where("practice", "=", practice)
      .where("stream", "in", names.slice(start, start + NAMES))
      .execute();
    for (const row of rows) found.set(row.stream, row);
  }
  return togetherInOrder(names.flatMap((name) => found.get(name) ?? []).map(keptStream));
}

/** By sort, then name, both compared as bytes. */
export async function listStreams(
  database: Database,
  practice: string,
  order: ListOrder,
): Promise<Result<readonly KeptStream[]>> {
  const { kind, belongs, from, until, after, most } = order;
  if (!(Number.isInteger(most) && most >= 1 && most <= MOST_OF_LIST)) {
    throw new RangeError(`a list of 1 to ${MOST_OF_LIST}, not ${most}`);
  }
  let asked = database
    .selectFrom("stream")
    .selectAll()
    .where("practice", "=", practice)
    .where("kind", "=", kind);
  if (belongs !== undefined) asked = asked.where("belongs", "=", belongs);
  if (from !== undefined) asked = asked.where("sort", ">=", from);
  if (until !== undefined) asked = asked.where("sort", "<", until);
  if (after !== undefined) {
    asked = asked.where((by) =>
      by.eb(by.refTuple("sort", "stream"), ">", by.tuple(after.sort, after.stream)),
    );
  }
  const rows = await asked.orderBy("sort").orderBy("stream").limit(most).execute();
  return togetherInOrder(rows.map(keptStream));
}

/** In the order of their numbers. */
export async function readEvents(
  database: Database,
  practice: string,
  stream: StreamName,
): Promise<Result<readonly KeptEvent[]>> {
  const rows = await database
    .selectFrom("event")
    .selectAll()
    .where("practice", "=", practice)
    .where("stream", "=", stream)
    .orderBy("number")
    .execute();
  return togetherInOrder(rows.map(keptEvent));
}

function keptStream(row: Tables["stream"]): Result<KeptStream> {
  const { number, belongs, sort } = row;
  const stream = streamName(row.stream);
  const state = readJson(stream, row.state);
  return state.ok ? good({ stream, number, belongs, sort, state: state.value }) : state;
}

function keptEvent(row: Tables["event"]): Result<KeptEvent> {
  const { number, action, made, arrived } = row;
  const stream = streamName(row.stream);
  const body = readJson(`${stream}/${number}`, row.body);
  const by = actorNamed(row.actor);
  return body.ok ? good({ stream, number, action, made, arrived, by, body: body.value }) : body;
}

/** Only append writes names, and it takes no others. */
export function streamName(text: string): StreamName {
  const kind = streamKinds.find((it) => text.startsWith(`${it}/`));
  if (kind === undefined) throw new Error(`a stored stream of no kind: ${text}`);
  return `${kind}/${text.slice(kind.length + 1)}`;
}

function actorNamed(text: string): Actor {
  const actor = actors.find((it) => it === text);
  if (actor === undefined) throw new Error(`a stored event by nobody: ${text}`);
  return actor;
}
