import type { MeansOfPaying } from "#core/roll";
import { ChoiceField } from "../fields/choice-field.tsx";

type Props<Means extends string> = {
  readonly label: string;
  readonly value: Means;
  readonly means: readonly Means[];
  readonly put: (value: Means) => void;
};

const words: Readonly<Record<MeansOfPaying | "later", string>> = {
  cash: "in cash",
  card: "by card",
  bank: "into the bank",
  later: "later",
};

/** How money comes in or goes back. */
export function MeansField<Means extends MeansOfPaying | "later">({
  label,
  value,
  means,
  put,
}: Props<Means>) {
  return (
    <ChoiceField
      label={label}
      value={value}
      choices={means.map((it) => ({ value: it, label: words[it] }))}
      onChange={(chosen) => {
        const found = means.find((it) => it === chosen);
        if (found !== undefined) put(found);
      }}
    />
  );
}
