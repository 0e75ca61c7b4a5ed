import type { CompareSheet } from "#app/views";
import { Show } from "../parts/show.tsx";

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
          {full.join() === expected.join() ? (
            <p className="small soft">Full, the order is the same.</p>
          ) : (
            <Show summary="Full, the order is another">
              <ol>
                {full.map((hall) => (
                  <li key={hall}>{hall}</li>
                ))}
              </ol>
            </Show>
          )}
        </div>
      ))}
    </div>
  );
}
