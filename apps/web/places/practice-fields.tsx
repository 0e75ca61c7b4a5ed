import { currencyCodes, type PracticeDocument } from "#core/words";
import { ChoiceField } from "../fields/choice-field.tsx";
import { WordsField } from "../fields/words-field.tsx";

type Props = {
  readonly document: PracticeDocument;
  readonly onChange: (document: PracticeDocument) => void;
  readonly unnamed: boolean;
};

/** What the whole of a practice shares. */
export function PracticeFields({ document, onChange, unnamed }: Props) {
  const put = (part: Partial<PracticeDocument>) => onChange({ ...document, ...part });
  return (
    <>
      <WordsField
        label="Name of the practice"
        help="Your own name will do"
        value={document.name}
        onChange={(name) => put({ name })}
        problem={unnamed ? "It needs a name, so that you can tell it from others." : null}
      />
      <ChoiceField
        label="Currency"
        value={document.currency}
        choices={currencies()}
        onChange={(currency) => put({ currency })}
      />
      <ChoiceField
        label="Time zone of the halls"
        value={document.zone}
        choices={zones(document.zone)}
        onChange={(zone) => put({ zone })}
      />
      <ChoiceField
        label="Words"
        help="Hire and waiting list, or rental and waitlist"
        value={document.locale}
        choices={[
          { value: "en-GB", label: "UK English" },
          { value: "en-US", label: "US English" },
        ]}
        onChange={(locale) => put({ locale: locale === "en-US" ? "en-US" : "en-GB" })}
      />
      <ChoiceField
        label="Lengths"
        value={document.units}
        choices={[
          { value: "metric", label: "metres" },
          { value: "feet", label: "feet and inches" },
        ]}
        onChange={(units) => put({ units: units === "feet" ? "feet" : "metric" })}
      />
    </>
  );
}

function currencies() {
  const names = new Intl.DisplayNames("en", { type: "currency" });
  return currencyCodes().map((code) => ({ value: code, label: `${code} – ${names.of(code) ?? code}` }));
}

function zones(present: string) {
  const known = Intl.supportedValuesOf("timeZone");
  const all = known.includes(present) ? known : [present, ...known];
  return all.map((zone) => ({ value: zone, label: zone.replaceAll("_", " ") }));
}
