import { memo } from "react";
import { type ClassDocument } from "#core/class";
import { GuessAt } from "../fields/guess-at.tsx";
import { MoneyField, OptionalMoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { Rows } from "../fields/rows.tsx";
import type { ClassPart } from "./class-part.ts";
import { sameParts } from "./same-parts.ts";
import { mixAfterSizes } from "./mix-after-sizes.ts";
import { OtherPriceFields } from "./other-price-fields.tsx";

/** What she asks. */
export const PriceFields = memo(
  function PriceFields({ document, change }: ClassPart) {
    const { prices } = document;
    const put = (part: Partial<ClassDocument["prices"]>) => change({ prices: { ...prices, ...part } });
    return (
      <div>
        <OptionalMoneyField
          path="prices.single"
          label="Single"
          per="a class"
          guessable
          value={prices.single}
          put={(single) => put({ single })}
        />
        <OptionalMoneyField
          path="prices.concession"
          label="Concession"
          help="Empty for none"
          per="a class"
          guessable
          value={prices.concession}
          put={(concession) => put({ concession })}
        />
        <Rows
          title="Passes"
          path="prices.passes"
          compact
          rows={prices.passes}
          fresh={() => ({ classes: freeSize(prices.passes), price: prices.single ?? "0.00" })}
          add="Add a pass"
          named={(index) => `pass of ${prices.passes[index]?.classes ?? ""} classes`}
          put={(rows) => {
            const passes = [...rows];
            const mix = mixAfterSizes(document.mix, "pass", sizesOf(prices.passes), sizesOf(passes));
            change({ prices: { ...prices, passes }, mix });
          }}
          before={<GuessAt path="prices.passes" label="Passes" />}
          renderRow={(pass, putPass, path) => (
            <>
              <NumberField
                path={`${path}.classes`}
                label="A pass of"
                unit="classes"
                range={{ least: 2, most: 200, whole: true }}
                value={pass.classes}
                put={(classes) => putPass({ ...pass, classes })}
              />
              <MoneyField
                path={`${path}.price`}
                label="Price of the pass"
                per="a pass"
                value={pass.price}
                put={(price) => putPass({ ...pass, price })}
              />
            </>
          )}
        />
        <OtherPriceFields document={document} change={change} />
      </div>
    );
  },
  sameParts("prices", "mix"),
);

function sizesOf(passes: ClassDocument["prices"]["passes"]): readonly number[] {
  return passes.map(({ classes }) => classes);
}

/** The first usual size that no pass has yet. */
function freeSize(passes: ClassDocument["prices"]["passes"]): number {
  const taken = new Set(sizesOf(passes));
  return [10, 5, 6, 8, 12, 20].find((size) => !taken.has(size)) ?? Math.max(...taken) + 1;
}
