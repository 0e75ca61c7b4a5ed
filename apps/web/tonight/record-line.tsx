import { recordWords } from "../record/record-words.ts";
import type { RecordOpen } from "../record/use-record.ts";

/** The line that says whether everything is kept; it is always in sight, and heard when it changes. */
export function RecordLine({ record }: { readonly record: RecordOpen }) {
  const { outbox, silent, keeper } = record;
  const waits = outbox.queue.length > 0;
  const trouble = outbox.unsettled.length > 0 || (waits && silent);
  return (
    <div className="save-bar" data-trouble={trouble || undefined}>
      <p className="row">
        <strong>The record</strong>
        <output className="save-words">{recordWords(record)}</output>
        {silent ? (
          <button type="button" className="link-button" onClick={() => void keeper.sync(true)}>
            Try now
          </button>
        ) : null}
      </p>
    </div>
  );
}
