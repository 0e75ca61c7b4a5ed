import type { Planning } from "#core/class";
import { memo } from "react";
import type { ClassPart } from "../class-sheet/class-part.ts";
import { sameParts } from "../class-sheet/same-parts.ts";
import { MoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { Rows } from "../fields/rows.tsx";

type Live = NonNullable<Planning["live"]>;

/** The passes that are out, as she has counted them: a row for each kind. */
export const LivePassFields = memo(
  function LivePassFields({ document, change }: ClassPart) {
    const { live = [], ...others } = document.planning ?? {};
    const put = (rows: Live) => change({ planning: rows.length === 0 ? others : { ...others, live: rows } });
    return (
      <Rows
        title="Passes that are out"
        path="planning.live"
        compact
        rows={live}
        fresh={() => freshPass(document)}
        add="Add passes that are out"
        named={(index) => `the passes of ${live[index]?.classes ?? ""} classes`}
        put={(rows) => put([...rows])}
        renderRow={(pass, putPass, path) => (
          <>
            <NumberField
              path={`${path}.passes`}
              label="How many"
              unit="passes"
              range={{ least: 1, most: 1000, whole: true }}
              value={pass.passes}
              put={(passes) => putPass({ ...pass, passes })}
            />
            <NumberField
              path={`${path}.classes`}
              label="Each of"
              unit="classes"
              range={{ least: 1, most: 200, whole: true }}
              value={pass.classes}
              put={(classes) => putPass({ ...pass, classes })}
            />
            <MoneyField
              path={`${path}.price`}
              label="Paid for each"
              per="a pass"
              value={pass.price}
              put={(price) => putPass({ ...pass, price })}
            />
            <NumberField
              path={`${path}.left`}
              label="Left over all of them"
              unit="classes"
              range={{ least: 0, most: 200_000, whole: true }}
              value={pass.left}
              put={(left) => putPass({ ...pass, left })}
            />
          </>
        )}
      />
    );
  },
  sameParts("planning", "prices"),
);

/** A pass that is sold now, half used: there to be overwritten. */
function freshPass({ prices }: ClassPart["document"]): Live[number] {
  const { classes, price } = prices.passes[0] ?? { classes: 10, price: prices.single ?? "0.00" };
  return { passes: 1, classes, price, left: Math.ceil(classes / 2) };
}
