import { memo } from "react";
import { MoneyField } from "../fields/money-field.tsx";
import { MINUTES, NumberField } from "../fields/number-field.tsx";
import { type Locale, word } from "#core/words";
import type { ClassPart } from "./class-part.ts";
import { sameParts } from "./same-parts.ts";

/** The minutes of an evening, from door to door. */
export const MinuteFields = memo(function MinuteFields({ document, change }: ClassPart) {
  const { minutes } = document;
  const field = (key: keyof typeof minutes, label: string, help?: string) => (
    <NumberField
      path={`minutes.${key}`}
      label={label}
      {...(help === undefined ? {} : { help })}
      unit="min"
      range={MINUTES}
      guessable
      value={minutes[key]}
      put={(value) => change({ minutes: { ...minutes, [key]: value } })}
    />
  );
  return (
    <fieldset className="fields">
      <legend>Minutes of an evening</legend>
      {field("setUp", "Setting up", "From the key in the door until the class begins")}
      {field("class", "The class")}
      {field("packDown", "Packing away", "Until the door is locked")}
      {field("travel", "Travel", "There and back")}
      {field("preparation", "Preparation")}
      {field("admin", "Messages and money")}
    </fieldset>
  );
}, sameParts("minutes"));

/** What an evening costs besides the room. */
export const CostFields = memo(function CostFields({
  document,
  change,
  locale,
}: ClassPart & { readonly locale: Locale }) {
  const { costs } = document;
  const field = (key: keyof typeof costs, label: string, per: string, help?: string) => (
    <MoneyField
      path={`costs.${key}`}
      label={label}
      {...(help === undefined ? {} : { help })}
      per={per}
      guessable
      value={costs[key]}
      put={(value) => change({ costs: { ...costs, [key]: value } })}
    />
  );
  return (
    <fieldset className="fields">
      <legend>What else it costs</legend>
      {field("travel", "Travel", "a session", "Fuel, fares, parking, there and back")}
      {field("music", "Music licence", "a session")}
      {field("cover", `A ${word("cover teacher", locale)}, on average`, "a session")}
      {field("other", "Anything else", "a session")}
      {field("perHead", "For each person", "a head", "Tea, card fee")}
    </fieldset>
  );
}, sameParts("costs"));
