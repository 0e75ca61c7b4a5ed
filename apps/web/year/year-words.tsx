import type { UsedYear } from "./use-year.ts";

/** The answer in words, what to look at before relying on it, and who decides. */
export function YearWords({ year }: { readonly year: UsedYear }) {
  const { reply, failure, problems, question } = year;
  if (question.document.classes.length === 0 && question.leftOut.length === 0)
    return <p className="answer">There is no class yet: begin one, and its dates stand here.</p>;
  if (reply === null)
    return problems.length > 0 ? null : (
      <p className="answer">
        <output>
          {failure === null ? "Counting the dates …" : `The year could not be counted: ${failure}`}
        </output>
      </p>
    );
  const [first = "", ...rest] = reply.json.sentences;
  return (
    <>
      <p className="answer">
        <output>{first}</output>
      </p>
      <ul className="list-plain stack-close">
        {rest.map((it) => (
          <li key={it}>{it}</li>
        ))}
      </ul>
      {question.leftOut.map(({ id, name, why }) => (
        <p key={id}>
          <strong>{name}</strong> is not in it: {why}
        </p>
      ))}
      {reply.json.notes.length === 0 ? null : (
        <>
          <h3>Look at these</h3>
          <ul className="ledger list-plain">
            {reply.json.notes.map((it) => (
              <li key={it}>{it}</li>
            ))}
          </ul>
        </>
      )}
      <p className="caution">
        The hall decides when it is open: ask for its dates. Public holidays are worked out by the rules of
        the law; a day that is proclaimed later has to be added.
      </p>
    </>
  );
}
