import type { HallDocument } from "#core/hall";
import { type PracticeDocument, word } from "#core/words";
import type { Opened } from "../drafts/use-draft.ts";
import { FormOf } from "../fields/form.tsx";
import { FloorEditor } from "../floor/floor-editor.tsx";
import { PlanWorth } from "../worth/plan-worth.tsx";
import { ratePerWhat } from "../words/rate-per-what.ts";
import { slotWords } from "./slot-words.ts";
import { useHallForm } from "./hall-form.ts";
import { HallParticulars } from "./hall-particulars.tsx";
import { OtherCurrency } from "./other-currency.tsx";
import { HireFields, noHire } from "./hire-fields.tsx";

type Props = { readonly opened: Opened<HallDocument>; readonly practice: PracticeDocument };

/** A hall: its floor, what it is called and how many it takes, what it charges. */
export function HallSheet({ opened, practice }: Props) {
  const { draft, keeper } = opened;
  const form = useHallForm(opened, practice);
  const { document } = draft;
  const change = (part: Partial<HallDocument>) => keeper.change((before) => ({ ...before, ...part }));
  const hire = word("hire", practice.locale);
  const rate = ratePerWhat(document.hire, form.currency, practice.locale);
  return (
    <FormOf form={form}>
      <nav className="contents" aria-label="On this page">
        <a href="#floor">The floor</a>
        <a href="#charges">What it charges</a>
        <a href="#called">Its name and its numbers</a>
      </nav>
      <section className="part" aria-labelledby="floor">
        <h2 id="floor">The floor</h2>
        <FloorEditor
          document={document}
          onChange={(next) => keeper.change(() => next)}
          units={practice.units}
          locale={practice.locale}
          Below={PlanWorth}
        />
      </section>
      <section className="part part-beside" aria-labelledby="charges">
        <div className="stack holds-fields">
          <h2 id="charges">What it charges</h2>
          <p className="answer">
            {rate === "" ? `The ${hire} is not known yet.` : `The ${hire} is ${rate}.`}
          </p>
          {document.hire === undefined ? null : <p>{slotWords(document.hire)}</p>}
          <OtherCurrency document={document} practice={practice} change={change} />
          <HireFields
            hire={document.hire ?? noHire}
            put={(terms) => change({ hire: terms, currency: form.currency })}
            locale={practice.locale}
          />
        </div>
        <div className="stack holds-fields">
          <h2 id="called">Its name and its numbers</h2>
          <HallParticulars document={document} change={change} locale={practice.locale} />
        </div>
      </section>
    </FormOf>
  );
}
