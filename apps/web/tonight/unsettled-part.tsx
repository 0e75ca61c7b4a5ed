import type { RecordOpen } from "../record/use-record.ts";
import { ProblemList } from "../parts/problem-list.tsx";

/** What the server refused, or kept otherwise than it was shown here: nothing of it goes but by her. */
export function UnsettledPart({ record }: { readonly record: RecordOpen }) {
  const { outbox, keeper } = record;
  const { unsettled, otherwise } = outbox;
  return (
    <>
      {unsettled.length > 0 ? (
        <section className="part no-print" aria-labelledby="unsettled">
          <h2 id="unsettled">Not kept yet: settle these</h2>
          <ul className="list-plain ledger">
            {unsettled.map(({ queued, problems }) => (
              <li key={queued.action} className="stack-close">
                <p>
                  <strong>{queued.words}</strong>
                </p>
                <ProblemList problems={problems} announce={false} />
                <p className="row">
                  <button type="button" className="button reach" onClick={() => keeper.again(queued.action)}>
                    Try again
                  </button>
                  <button
                    type="button"
                    className="button reach"
                    onClick={() => keeper.putAside(queued.action)}
                  >
                    Settled: put it aside
                  </button>
                </p>
              </li>
            ))}
          </ul>
        </section>
      ) : null}
      {otherwise.length > 0 ? (
        <section className="part no-print" aria-labelledby="otherwise">
          <h2 id="otherwise">Kept, but otherwise than you saw</h2>
          <ul className="list-plain ledger">
            {otherwise.map(({ action, words, says }) => (
              <li key={action} className="stack-close">
                <p>
                  <strong>{words}</strong>
                </p>
                <p>{says.join(" ")}</p>
                <p>
                  <button type="button" className="button reach" onClick={() => keeper.putAside(action)}>
                    I have read it
                  </button>
                </p>
              </li>
            ))}
          </ul>
        </section>
      ) : null}
    </>
  );
}
