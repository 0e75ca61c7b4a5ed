import { moveUseBy } from "#core/books";
import { type FormEvent, useState } from "react";
import { FormOf } from "../fields/form.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { Working } from "../parts/working.tsx";
import { screenWriter } from "../record/screen-writer.ts";
import { passDates } from "./pass-dates.ts";
import type { PassAt } from "./pass-item.tsx";
import { guessedLine } from "./pause-form.tsx";
import { useOwnForm } from "./use-own-form.ts";

/** A later use-by, in teaching dates, with its sum. */
export function ExtendForm({ pass, doing, today, at, classes }: PassAt) {
  const [by, setBy] = useState(2);
  const { form, hasSlips } = useOwnForm(pass.currency);
  const { day } = screenWriter(at.practice.locale);
  const found = moveUseBy(pass.useBy, passDates(pass.valid, classes), by);
  const extend = (event: FormEvent) => {
    event.preventDefault();
    if (hasSlips) return;
    const change = { kind: "extended", on: today, useBy: found.date, why: "kindness" } as const;
    void doing.run({ kind: "change pass", pass: pass.pass, change });
  };
  return (
    <FormOf form={form}>
      <form className="stack-close measure holds-fields" noValidate onSubmit={extend}>
        <NumberField
          path={`${pass.pass}.later`}
          label="Later by"
          unit={by === 1 ? "teaching week" : "teaching weeks"}
          range={{ least: 1, most: 52, whole: true }}
          value={by}
          put={setBy}
        />
        <Working
          caption="The later use-by"
          lines={[
            { label: "Use-by now", sum: "", amount: day(pass.useBy) },
            { label: "Later by teaching dates", sum: "closed dates left out", amount: String(by) },
            ...guessedLine(found.guessed),
            { label: "Use-by then", sum: "", amount: day(found.date), total: true },
          ]}
        />
        <p>
          <button type="submit" className="button" disabled={doing.busy}>
            Use by {day(found.date)} instead
          </button>
        </p>
      </form>
    </FormOf>
  );
}
