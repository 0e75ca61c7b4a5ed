import { meansOfPaying } from "#core/roll";
import { isCurrency, readMoney } from "#core/words";
import { ChoiceField } from "../fields/choice-field.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { screenWriter } from "../record/screen-writer.ts";
import { MeansField } from "./means-field.tsx";
import type { Classes } from "./pass-dates.ts";
import type { PassOffer } from "./pass-offers.ts";
import type { PersonAt } from "./person-page.tsx";
import { offered, type SaleDraft } from "./sale-draft.ts";

export type SalePart = {
  readonly draft: SaleDraft;
  readonly put: (draft: SaleDraft) => void;
  readonly classes: Classes;
  readonly at: PersonAt;
  readonly today: string;
};

type Props = SalePart & { readonly offers: readonly PassOffer[]; readonly forget: () => void };

/** What is sold: from her prices or otherwise, how many classes, for how much, good for which classes. */
export function SaleFields({ draft, put, classes, at, offers, forget }: Props) {
  const { locale, currency } = at.practice;
  const { money } = screenWriter(locale);
  const isBlock = draft.form === "block";
  return (
    <div className="measure holds-fields">
      {offers.length === 0 ? null : (
        <ChoiceField
          label="From your prices"
          help="A start: every figure can be changed below."
          value={offers.find((it) => isOf(draft, it))?.key ?? ""}
          choices={[
            { value: "", label: "something else" },
            ...offers.map((it) => ({ value: it.key, label: offerWords(it, money, currency) })),
          ]}
          onChange={(key) => {
            const found = offers.find((it) => it.key === key);
            forget();
            if (found !== undefined) put(offered(draft, found));
          }}
        />
      )}
      <ChoiceField
        label="What it is"
        value={draft.form}
        choices={[
          { value: "pass", label: "a pass, for any dates" },
          { value: "block", label: "a block, of dates chosen now" },
        ]}
        onChange={(value) =>
          put({ ...draft, form: value === "block" ? "block" : "pass", useBy: null, sessions: [] })
        }
      />
      {isBlock ? null : (
        <NumberField
          path="sale.size"
          label="Classes in it"
          range={{ least: 1, most: 200, whole: true }}
          value={draft.size}
          put={(size) => put({ ...draft, size })}
        />
      )}
      <MoneyField
        path="sale.price"
        label="Price of all of it"
        value={draft.price}
        put={(price) => put({ ...draft, price })}
      />
      <MeansField
        label="How it is paid"
        value={draft.paid}
        means={[...meansOfPaying, "later"]}
        put={(paid) => put({ ...draft, paid })}
      />
      {isBlock ? null : <ValidFor draft={draft} put={put} classes={classes} />}
    </div>
  );
}

function ValidFor({ draft, put, classes }: Pick<SalePart, "draft" | "put" | "classes">) {
  const { valid } = draft;
  const chosen = valid === "all" ? [] : valid;
  const change = (next: SaleDraft["valid"]) => put({ ...draft, valid: next, weeks: null, useBy: null });
  return (
    <fieldset className="fields">
      <legend>Good for</legend>
      <div>
        <TickField label="all classes" checked={valid === "all"} put={(on) => change(on ? "all" : [])} />
      </div>
      {valid === "all"
        ? null
        : classes.map(({ id, document }) => (
            <div key={id}>
              <TickField
                label={document.name}
                checked={chosen.includes(id)}
                put={(on) => change(on ? [...chosen, id] : chosen.filter((other) => other !== id))}
              />
            </div>
          ))}
      {valid !== "all" && valid.length === 0 ? (
        <p className="field-problem">It is good for no class yet. Choose at least one.</p>
      ) : null}
    </fieldset>
  );
}

function isOf(draft: SaleDraft, offer: PassOffer): boolean {
  const size = draft.form === "block" || draft.size === offer.size;
  return draft.form === offer.form && draft.class === offer.class && draft.price === offer.price && size;
}

function offerWords(
  { form, size, price, className }: PassOffer,
  money: (amount: number, currency: string) => string,
  currency: string,
): string {
  const read = isCurrency(currency) ? readMoney(price, currency, "") : null;
  const said = read !== null && read.ok ? money(read.value, currency) : price;
  return `${form === "block" ? "block" : "pass"} of ${size} for ${said}, ${className}`;
}
