import type { CompareSheet } from "#app/views";

type Props = { readonly orders: Extract<CompareSheet, { kind: "ready" }>["orders"] };

/** The three orders of the halls, with the same people and full. */
export function HallOrders({ orders }: Props) {
  return (
    <div className="hall-orders">
      {orders.map(({ by, expected, full }) => (
        <div key={by} className="stack-close">
          <h3>{by}</h3>
          <ol>
            {expected.map((hall) => (
              <li key={hall}>{hall}</li>
            ))}
          </ol>
          <p className="small soft">
            {full.join() === expected.join() ? "Full, the order is the same." : `Full: ${full.join("; ")}.`}
          </p>
        </div>
      ))}
    </div>
  );
}
