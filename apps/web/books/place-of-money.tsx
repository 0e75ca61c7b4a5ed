import type { MeansOfPaying } from "#core/roll";
import { ChoiceField } from "../fields/choice-field.tsx";

type Props = {
  readonly label: string;
  readonly value: MeansOfPaying;
  readonly places: readonly MeansOfPaying[];
  readonly put: (value: MeansOfPaying) => void;
};

/** What she pays comes out of the box or the bank. */
export const PAID_FROM: readonly MeansOfPaying[] = ["bank", "cash"];

const words: Readonly<Record<MeansOfPaying, string>> = {
  cash: "the cash box",
  card: "card payments on their way",
  bank: "the bank",
};

/** Where money lies, goes to or comes from. */
export function PlaceOfMoney({ label, value, places, put }: Props) {
  return (
    <ChoiceField
      label={label}
      value={value}
      choices={places.map((it) => ({ value: it, label: words[it] }))}
      onChange={(chosen) => {
        const found = places.find((it) => it === chosen);
        if (found !== undefined) put(found);
      }}
    />
  );
}
