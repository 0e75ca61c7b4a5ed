import type { StudioDocument } from "#core/price";
import type { CurrencyCode } from "#core/words";
import { ChoiceField } from "../fields/choice-field.tsx";
import { useDropTyped } from "../fields/form.tsx";
import { GuessAt } from "../fields/guess-at.tsx";
import { MoneyField, OptionalMoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { PercentField } from "../fields/percent-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { payOf } from "./studio-offer.ts";

type Pay = StudioDocument["pay"];
type Props = {
  readonly studio: StudioDocument;
  readonly currency: CurrencyCode;
  readonly put: (studio: StudioDocument) => void;
};

const forms: readonly { readonly value: Pay["form"]; readonly label: string }[] = [
  { value: "flat", label: "the same for every class" },
  { value: "tiered", label: "a base, and more from so many people on" },
  { value: "per head", label: "so much for each person" },
  { value: "share of takings", label: "a share of what people pay" },
];

/** What a studio pays for a class, and what the class takes of her day. */
export function StudioFields({ studio, currency, put }: Props) {
  const dropTyped = useDropTyped();
  const set = (part: Partial<StudioDocument>) => put({ ...studio, ...part });
  const choose = (value: string) => {
    const chosen = forms.find((it) => it.value === value);
    if (chosen === undefined || chosen.value === studio.pay.form) return;
    dropTyped("planning.studio.pay");
    set({ pay: payOf(chosen.value, currency) });
  };
  return (
    <div>
      <WordsField label="Name of the studio" value={studio.name} onChange={(name) => set({ name })} />
      <ChoiceField
        label="It pays"
        value={studio.pay.form}
        choices={forms}
        onChange={choose}
        after={<GuessAt path="planning.studio" label="What the studio offers" />}
      />
      <PayFields pay={studio.pay} put={(pay) => set({ pay })} />
      <NumberField
        path="planning.studio.heads"
        label="People in your class there"
        help="On an ordinary day"
        unit="people"
        range={{ least: 0, most: 1000 }}
        value={studio.heads}
        put={(heads) => set({ heads })}
      />
      <NumberField
        path="planning.studio.minutes"
        label="From door to door"
        help="Travel there and back, the class, and what comes before and after it"
        unit="minutes"
        range={{ least: 1, most: 1440, whole: true }}
        value={studio.minutes}
        put={(minutes) => set({ minutes })}
      />
      <MoneyField
        path="planning.studio.travelCost"
        label="Travel there and back"
        per="a class"
        value={studio.travelCost}
        put={(travelCost) => set({ travelCost })}
      />
    </div>
  );
}

type PayProps = { readonly pay: Pay; readonly put: (pay: Pay) => void };

function PayFields({ pay, put }: PayProps) {
  switch (pay.form) {
    case "flat":
      return (
        <MoneyField
          path="planning.studio.pay.pay"
          label="Pay"
          per="a class"
          value={pay.pay}
          put={(amount) => put({ ...pay, pay: amount })}
        />
      );
    case "tiered":
      return <TieredFields pay={pay} put={put} />;
    case "per head":
      return (
        <>
          <MoneyField
            path="planning.studio.pay.perHead"
            label="For each person"
            per="a person"
            value={pay.perHead}
            put={(perHead) => put({ ...pay, perHead })}
          />
          <Least pay={pay} put={(minimum) => put({ ...pay, minimum })} />
        </>
      );
    case "share of takings":
      return (
        <>
          <PercentField
            path="planning.studio.pay.share"
            label="Your share"
            value={pay.share}
            put={(share) => put({ ...pay, share })}
          />
          <MoneyField
            path="planning.studio.pay.takingsPerHead"
            label="One person pays there"
            help="On average, over all ways of paying"
            per="a class"
            value={pay.takingsPerHead}
            put={(takingsPerHead) => put({ ...pay, takingsPerHead })}
          />
          <Least pay={pay} put={(minimum) => put({ ...pay, minimum })} />
        </>
      );
  }
}

type TieredProps = {
  readonly pay: Extract<Pay, { form: "tiered" }>;
  readonly put: (pay: Pay) => void;
};

function TieredFields({ pay, put }: TieredProps) {
  return (
    <>
      <MoneyField
        path="planning.studio.pay.base"
        label="Base"
        per="a class"
        value={pay.base}
        put={(base) => put({ ...pay, base })}
      />
      <NumberField
        path="planning.studio.pay.above"
        label="The base covers"
        unit="people"
        range={{ least: 0, most: 1000, whole: true }}
        value={pay.above}
        put={(above) => put({ ...pay, above })}
      />
      <MoneyField
        path="planning.studio.pay.perHead"
        label="For each person more"
        per="a person"
        value={pay.perHead}
        put={(perHead) => put({ ...pay, perHead })}
      />
      <OptionalMoneyField
        path="planning.studio.pay.cap"
        label="At most"
        help="Empty for no limit"
        per="a class"
        value={pay.cap}
        put={(cap) => {
          const { cap: _, ...others } = pay;
          put(cap === undefined ? others : { ...others, cap });
        }}
      />
    </>
  );
}

type LeastProps = {
  readonly pay: Extract<Pay, { minimum: string }>;
  readonly put: (minimum: string) => void;
};

function Least({ pay, put }: LeastProps) {
  return (
    <MoneyField
      path="planning.studio.pay.minimum"
      label="At least"
      per="a class"
      value={pay.minimum}
      put={put}
    />
  );
}
