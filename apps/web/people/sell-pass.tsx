import type { DoAskInput } from "#app/record";
import { type FormEvent, useState } from "react";
import { newId } from "../api/new-id.ts";
import { FormOf } from "../fields/form.tsx";
import { Show } from "../parts/show.tsx";
import { screenWriter } from "../record/screen-writer.ts";
import { coinsOf } from "./coins.ts";
import { DoneWords } from "./done-words.tsx";
import { takeAsk } from "./held-ahead.tsx";
import { type Classes, passDates, useByFound, validClasses } from "./pass-dates.ts";
import { passOffers, weeksFor } from "./pass-offers.ts";
import type { PersonAt } from "./person-page.tsx";
import { SaleBlock } from "./sale-block.tsx";
import { freshSale, type SaleDraft } from "./sale-draft.ts";
import { SaleFields } from "./sale-fields.tsx";
import { SaleTerms } from "./sale-terms.tsx";
import { SaleUseBy } from "./sale-use-by.tsx";
import { todayHere } from "./today-here.ts";
import { useDoing } from "./use-doing.ts";
import { useOwnForm } from "./use-own-form.ts";
import { useTyped } from "./use-typed.ts";

type Props = { readonly at: PersonAt; readonly classes: Classes };

/** The sale of a pass of classes, or of a block of named sessions whose places are held at once. */
export function SellPass({ at, classes }: Props) {
  const { practiceId, practice, id } = at;
  const { currency, locale, zone } = practice;
  const offers = passOffers(classes);
  const fresh = freshSale(offers, classes[0]?.id ?? "");
  const typed = useTyped(`${practiceId} sale ${id}`, fresh);
  const { form, hasSlips, forget } = useOwnForm(currency);
  const doing = useDoing(practiceId, locale);
  // the same id until it is sold: an answer that was lost sells nothing twice
  const [pass, setPass] = useState(newId);
  const today = todayHere(zone);
  const draft = typed.value;
  const put = (next: SaleDraft) => {
    typed.put(next);
    doing.clear();
  };
  const weeks = draft.weeks ?? weeksFor(draft.size, validClasses(draft.valid, classes))?.weeks ?? 12;
  const found = useByFound(
    { dates: passDates(draft.valid, classes, today), weeks, sold: today },
    screenWriter(locale).day,
  );
  const useBy = draft.form === "block" ? draft.useBy : (draft.useBy ?? (found.ok ? found.value.date : null));
  const ask =
    hasSlips || useBy === null ? null : saleAsk(draft, { pass, holder: id, today, currency, useBy });
  const sell = async (event: FormEvent) => {
    event.preventDefault();
    if (ask === null || !(await doing.run(ask))) return;
    const takes = draft.form === "block" ? draft.sessions : [];
    const sold = pass;
    setPass(newId());
    typed.clear(fresh);
    forget();
    if (takes.length > 0) await doing.run(...takes.map((session) => takeAsk(session, id, sold, "block")));
  };
  const parts = { draft, put, classes, at, today };
  return (
    <Show summary="Sell a pass or a block" open={typed.touched}>
      <FormOf form={form}>
        <form
          className="stack"
          aria-label="Sell a pass or a block"
          noValidate
          onSubmit={(event) => void sell(event)}
        >
          <SaleFields {...parts} offers={offers} forget={forget} />
          {draft.form === "block" ? (
            <SaleBlock {...parts} />
          ) : (
            <SaleUseBy {...parts} weeks={weeks} found={found} useBy={useBy} />
          )}
          <SaleTerms {...parts} />
          <p className="row">
            <button type="submit" className="button button-main" disabled={doing.busy || ask === null}>
              {sellWords(draft, screenWriter(locale).money, currency)}
            </button>
          </p>
        </form>
      </FormOf>
      <DoneWords doing={doing} />
    </Show>
  );
}

function sellWords(draft: SaleDraft, money: (amount: number, currency: string) => string, currency: string) {
  const coins = coinsOf(draft.price, currency);
  const price = coins === null ? "" : ` for ${money(coins, currency)}`;
  return `Sell the ${nameOf(draft).toLowerCase()}${price}`;
}

function nameOf({ form, size }: SaleDraft): string {
  return form === "block" ? `Block of ${size}` : `Pass of ${size}`;
}

type Sale = {
  readonly pass: string;
  readonly holder: string;
  readonly today: string;
  readonly currency: string;
  readonly useBy: string;
};

function saleAsk(draft: SaleDraft, { pass, holder, today, currency, useBy }: Sale): DoAskInput | null {
  const price = coinsOf(draft.price, currency);
  const perClass = draft.perClass === undefined ? null : coinsOf(draft.perClass, currency);
  const isBlock = draft.form === "block";
  if (price === null || (isBlock && draft.sessions.length === 0)) return null;
  if (!isBlock && draft.valid !== "all" && draft.valid.length === 0) return null;
  return {
    kind: "sell pass",
    pass,
    form: draft.form,
    holder,
    name: nameOf(draft),
    on: today,
    size: draft.size,
    price,
    currency,
    paid: draft.paid,
    useBy,
    valid: isBlock ? [draft.class] : draft.valid === "all" ? "all" : [...draft.valid],
    sessions: isBlock ? [...draft.sessions] : [],
    terms: { perClassOnRefund: perClass, transferable: draft.transferable, pauses: draft.pauses },
  };
}
