import { type MeansOfPaying, meansOfPaying } from "#core/roll";
import { useState } from "react";
import { FormOf } from "../fields/form.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { coinsOf } from "../people/coins.ts";
import { useOwnForm } from "../people/use-own-form.ts";
import { EntryForm, type FormAt } from "./entry-form.tsx";
import { PlaceOfMoney } from "./place-of-money.tsx";

/** Money that changes its place; a fee kept on the way is a cost. */
export function MoveForm({ at, doing }: FormAt) {
  const { currency } = at.practice;
  const [from, setFrom] = useState<MeansOfPaying>("cash");
  const [to, setTo] = useState<MeansOfPaying>("bank");
  const [fee, setFee] = useState("0");
  const { form, hasSlips } = useOwnForm(currency);
  const kept = coinsOf(fee, currency);
  const slip = hasSlips || kept === null ? "Write the fee like 1.75, or 0." : "";
  return (
    <EntryForm
      at={at}
      doing={doing}
      label="Money that changes its place"
      button="Write this move down"
      slip={slip}
      write={(written) => doing.run({ kind: "move money", from, to, fee: kept ?? 0, ...written })}
    >
      <PlaceOfMoney label="From" value={from} places={meansOfPaying} put={setFrom} />
      <PlaceOfMoney label="To" value={to} places={meansOfPaying} put={setTo} />
      <FormOf form={form}>
        <MoneyField path="fee" label="Of it kept on the way as a fee" value={fee} put={setFee} />
      </FormOf>
    </EntryForm>
  );
}
