import type { CashMonth } from "#app/views";
import { useId } from "react";
import { TableFrame } from "../parts/table-frame.tsx";

/** Where the money lay: in, out and the change of each place. */
export function PlacesTable({ places }: Pick<CashMonth, "places">) {
  const id = useId();
  return (
    <TableFrame labelledBy={id}>
      <table className="figures books-table">
        <caption id={id}>By where it lay; what only changed its place is in one and out of another</caption>
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">In</th>
            <th scope="col">Out</th>
            <th scope="col">Change</th>
          </tr>
        </thead>
        <tbody>
          {places.map((it) => (
            <tr key={it.where}>
              <th scope="row">{it.where}</th>
              <td>{it.in}</td>
              <td>{it.out}</td>
              <td>{it.change}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
