import type { KeptStream, RecordStore, StreamKind } from "#app/ports";
import { good, type Result } from "#core/words";

const PAGE = 1000;

/** Every stream of a kind, page after page: all people of a practice, or all passes, or those of one holder. */
export async function readAll(
  store: RecordStore,
  practice: string,
  kind: StreamKind,
  belongs?: string,
): Promise<Result<readonly KeptStream[]>> {
  let all: readonly KeptStream[] = [];
  for (;;) {
    const last = all.at(-1);
    const page = await store.list(practice, {
      kind,
      most: PAGE,
      ...(belongs === undefined ? {} : { belongs }),
      ...(last === undefined ? {} : { after: { sort: last.sort, stream: last.stream } }),
    });
    if (!page.ok) return page;
    all = [...all, ...page.value];
    if (page.value.length < PAGE) return good(all);
  }
}
