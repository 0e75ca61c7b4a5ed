import { idFromName } from "#app/actions";
import { headingWords } from "#app/views";
import { useState } from "react";
import { ChoiceField } from "../fields/choice-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { EntryForm, type FormAt } from "./entry-form.tsx";

const headings = ["studio", "workshop", "private", "other"] as const;

/** Work that is taught and paid later; it stands under “Unpaid to you” until it is paid. */
export function WorkForm({ at, doing }: FormAt) {
  const [heading, setHeading] = useState<(typeof headings)[number]>("studio");
  const [invoice, setInvoice] = useState("");
  const id = idFromName({ name: invoice }, "");
  return (
    <EntryForm
      at={at}
      doing={doing}
      label="Work paid by invoice"
      button="Write this work down"
      slip={id === "" ? "Write the number of the invoice, or what the payment will name." : ""}
      write={(written) => doing.run({ kind: "write work", how: "taught", heading, invoice: id, ...written })}
    >
      <ChoiceField
        label="For"
        value={heading}
        choices={headings.map((it) => ({ value: it, label: headingWords(it) }))}
        onChange={(chosen) => setHeading(headings.find((it) => it === chosen) ?? "other")}
      />
      <WordsField
        label="Invoice, or whom it is for"
        help="As the payment will name it"
        value={invoice}
        onChange={setInvoice}
      />
    </EntryForm>
  );
}
