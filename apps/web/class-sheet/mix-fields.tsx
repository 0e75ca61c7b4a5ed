import { memo } from "react";
import { payerKey } from "#core/price";
import { GuessAt } from "../fields/guess-at.tsx";
import { useFormField } from "../fields/form.tsx";
import { PercentField } from "../fields/percent-field.tsx";
import type { ClassPart } from "./class-part.ts";
import { sameParts } from "./same-parts.ts";

/** How the people on the mats pay, in shares of a hundred. */
export const MixFields = memo(
  function MixFields({ document, change }: ClassPart) {
    const { mix } = document;
    const group = useFormField("mix");
    const keys = keysOf(document);
    const together = keys.reduce((sum, key) => sum + (mix[key] ?? 0), 0);
    const percent = Number((together * 100).toFixed(4));
    const whole = Math.abs(percent - 100) < 1e-6;
    return (
      <fieldset className="fields">
        <legend>Of 100 people on the mats, how many …</legend>
        {keys.map((key) => (
          <PercentField
            key={key}
            path={`mix.${key}`}
            label={labelOf(key)}
            value={mix[key] ?? 0}
            put={(share) => {
              change({ mix: { ...mix, [key]: share } });
              if (group.guess === true) group.setGuess(false);
            }}
          />
        ))}
        <div className="field field-sum">
          <span>{whole ? "Together" : "Together – it must be 100"}</span>
          <span className="field-entry">
            <output className="figure">{percent}</output>
            <span className="field-unit">%</span>
            <GuessAt path="mix" label="How people pay" />
          </span>
          {whole ? null : (
            <p className="field-problem" role="alert">
              {percent < 100
                ? `${Number((100 - percent).toFixed(4))} of 100 people are not counted yet.`
                : `${Number((percent - 100).toFixed(4))} of 100 people are counted twice.`}{" "}
              What rests on how people pay is not worked out until it is 100.
            </p>
          )}
        </div>
      </fieldset>
    );
  },
  sameParts("prices", "mix"),
);

/** Reads on from the heading: "Of 100 people on the mats, how many … pay a single". */
function labelOf(key: string): string {
  const payer = payerKey(key);
  switch (payer?.kind) {
    case "single":
      return "pay a single";
    case "concession":
      return "pay the concession";
    case "free":
      return "come free";
    case "pass":
      return `come on a pass of ${payer.classes} classes`;
    case "course":
      return `come on a course of ${payer.sessions}`;
    case "pay-what-you-can":
      return "pay what they can";
    case "monthly":
      return "pay by the month";
    case undefined:
      return key;
  }
}

/** The ways to pay that there is a price for, and any other that still has a share. */
function keysOf({ prices, mix }: ClassPart["document"]): readonly string[] {
  const priced = [
    ...(prices.single === undefined ? [] : ["single"]),
    ...prices.passes.map((it) => `pass-${it.classes}`),
    ...(prices.concession === undefined ? [] : ["concession"]),
    ...(prices.courses ?? []).map((it) => `course-${it.sessions}`),
    ...(prices.payWhatYouCan === undefined ? [] : ["pay-what-you-can"]),
    ...(prices.monthly === undefined ? [] : ["monthly"]),
    "free",
  ];
  const others = Object.keys(mix).filter((key) => !priced.includes(key) && (mix[key] ?? 0) !== 0);
  return [...new Set([...priced, ...others])];
}
