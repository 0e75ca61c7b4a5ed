import { type BooksInput, booksOwed } from "#app/views";
import { useId, useMemo } from "react";
import { Show } from "../parts/show.tsx";
import { TableFrame } from "../parts/table-frame.tsx";

/** The debt in classes: what was paid ahead and is still to be taught, pass by pass. */
export function OwedPart({ input }: { readonly input: BooksInput }) {
  const id = useId();
  const { owed, owedTotal, classesTotal } = useMemo(() => booksOwed(input), [input]);
  const say = (amount: number) => input.writer.money(amount, input.currency);
  return (
    <section className="part books-part" aria-labelledby="owed">
      <h2 id="owed" className="part-title">
        A debt in classes
      </h2>
      {owed.length === 0 ? (
        <p>Nothing is owed: no pass has classes left, and no place is paid ahead.</p>
      ) : (
        <>
          <p>
            {say(owedTotal)} was paid ahead and is still to be taught: {classesTotal}{" "}
            {classesTotal === 1 ? "class" : "classes"} on passes and blocks, and places paid ahead. The money
            is in hand, but it is earned only when the classes are taught.
          </p>
          <Show summary={`All ${owed.length} of them`}>
            <TableFrame labelledBy={id}>
              <table className="figures books-table">
                <caption id={id}>Owed, pass by pass and place by place</caption>
                <thead>
                  <tr>
                    <th scope="col">What</th>
                    <th scope="col">Classes left</th>
                    <th scope="col">Owed</th>
                  </tr>
                </thead>
                <tbody>
                  {owed.map((row) => (
                    <tr key={row.id}>
                      <th scope="row" className="books-word">
                        {row.what}
                        <span className="small soft books-whose">{row.person ?? "no name any more"}</span>
                      </th>
                      <td>{row.classes === 0 ? "a place" : row.classes}</td>
                      <td>{say(row.amount)}</td>
                    </tr>
                  ))}
                </tbody>
                <tfoot>
                  <tr>
                    <th scope="row">Together</th>
                    <td>{classesTotal}</td>
                    <td>{say(owedTotal)}</td>
                  </tr>
                </tfoot>
              </table>
            </TableFrame>
          </Show>
        </>
      )}
    </section>
  );
}
