import type { HireTermsDocument } from "#core/hall";
import { type Locale, word } from "#core/words";
import { ChoiceField } from "../fields/choice-field.tsx";
import { OptionalMoneyField } from "../fields/money-field.tsx";
import { MINUTES, NumberField } from "../fields/number-field.tsx";
import { Show } from "../parts/show.tsx";
import { BandRows } from "./band-rows.tsx";
import { HeatingFields } from "./heating-fields.tsx";
import { HireFactors } from "./hire-factors.tsx";
import { RateRows } from "./rate-rows.tsx";

type Props = {
  readonly hire: HireTermsDocument;
  readonly put: (hire: HireTermsDocument) => void;
  readonly locale: Locale;
};

/** What a hall charges, the ordinary first and the rarer below. */
export function HireFields({ hire, put, locale }: Props) {
  const change = (part: Partial<HireTermsDocument>) => put({ ...hire, ...part });
  const many =
    (hire.setUpFactor ?? 1) !== 1 ||
    (hire.weekendFactor ?? 1) !== 1 ||
    (hire.bands ?? []).length > 0 ||
    (hire.rates ?? []).length > 0;
  return (
    <div className="stack">
      <div>
        <RateFields hire={hire} put={put} locale={locale} />
        <NumberField
          path="hire.minimumMinutes"
          label="The least that is charged"
          unit="min"
          range={MINUTES}
          value={hire.minimumMinutes}
          put={(minimumMinutes) => change({ minimumMinutes })}
        />
        <NumberField
          path="hire.incrementMinutes"
          label="Charged in steps of"
          help="60 where each hour begun is charged, 1 where every minute counts"
          unit="min"
          range={{ ...MINUTES, least: 1 }}
          value={hire.incrementMinutes}
          put={(incrementMinutes) => change({ incrementMinutes })}
        />
        <NumberField
          path="hire.freeBeforeMinutes"
          label="Free before, for setting up"
          unit="min"
          range={MINUTES}
          value={hire.freeBeforeMinutes}
          put={(freeBeforeMinutes) => change({ freeBeforeMinutes })}
        />
        <NumberField
          path="hire.freeAfterMinutes"
          label="Free after, for packing away"
          unit="min"
          range={MINUTES}
          value={hire.freeAfterMinutes}
          put={(freeAfterMinutes) => change({ freeAfterMinutes })}
        />
      </div>
      <HeatingFields hire={hire} change={change} />
      <Show summary="Weekends, set-up, many hours, a new rate" open={many}>
        <HireFactors hire={hire} change={change} />
        <BandRows hire={hire} change={change} />
        <RateRows hire={hire} change={change} />
      </Show>
    </div>
  );
}

/** By the hour or by the session: one of the two holds the rate. */
function RateFields({ hire, put, locale }: Props) {
  const { perHour, perSession, ...others } = hire;
  const bySession = perSession !== undefined;
  const rate = bySession ? perSession : perHour;
  const set = (session: boolean, amount: string | undefined) => {
    if (amount === undefined && !session) put(others);
    else
      put(session ? { ...others, perSession: amount ?? "0.00" } : { ...others, perHour: amount ?? "0.00" });
  };
  return (
    <>
      <ChoiceField
        label={`The ${word("hire", locale)} is`}
        value={bySession ? "session" : "hour"}
        choices={[
          { value: "hour", label: "by the hour" },
          { value: "session", label: "by the session" },
        ]}
        onChange={(chosen) => set(chosen === "session", rate)}
      />
      <OptionalMoneyField
        path={bySession ? "hire.perSession" : "hire.perHour"}
        label="Rate"
        per={bySession ? "a session" : "an hour"}
        guessable
        value={rate}
        put={(amount) => set(bySession, amount)}
      />
    </>
  );
}

/** A hall whose terms are not known yet. */
export const noHire: HireTermsDocument = {
  minimumMinutes: 0,
  incrementMinutes: 30,
  freeBeforeMinutes: 0,
  freeAfterMinutes: 0,
};
