import { type ClassOutlook, outlookFigure } from "#core/class";
import type { ClassPart } from "../class-sheet/class-part.ts";
import { ChoiceField } from "../fields/choice-field.tsx";
import { useDropTyped } from "../fields/form.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { NumberField, OptionalNumberField } from "../fields/number-field.tsx";
import { PercentField } from "../fields/percent-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { putOutlook } from "./outlook-part.ts";

type Opening = NonNullable<ClassOutlook["opening"]>;
type Props = { readonly opening: Opening; readonly put: (opening: Opening) => void };

/** What the number to accept rests on: who turns up, who comes together, and what happened. */
export function OpeningFields({ document, change }: ClassPart) {
  const opening = document.outlook?.opening ?? {};
  const put = (next: Opening) => putOutlook({ document, change }, "opening", next);
  return (
    <div>
      <PercentField
        path="outlook.opening.turnUp"
        label="Of 100 accepted, so many come"
        help="To a free class often half to two thirds, to a paid one nine of ten"
        guessable
        value={outlookFigure(document, "opening.turnUp")}
        put={(turnUp) => put({ ...opening, turnUp })}
      />
      <PairsFields opening={opening} put={put} />
      <PercentField
        path="outlook.opening.risk"
        label="Too many may come in so many of 100 openings"
        least={0.1}
        most={50}
        value={opening.risk ?? 0.05}
        put={(risk) => put({ ...opening, risk })}
      />
      <TickField
        label="These are paid places"
        checked={opening.paid ?? false}
        put={(paid) => put({ ...opening, paid })}
      />
      <CostFields opening={opening} put={put} />
      <HappenedFields opening={opening} put={put} returns={outlookFigure(document, "opening.returns")} />
    </div>
  );
}

const together = [
  { value: "alone", label: "each decides alone" },
  { value: "several", label: "several come in pairs" },
  { value: "known", label: "so many pairs are known" },
];

function PairsFields({ opening, put }: Props) {
  const dropTyped = useDropTyped();
  const { pairs = false } = opening;
  const counted = typeof pairs === "number" && pairs >= 1;
  const choose = (value: string) => {
    dropTyped("outlook.opening.pairs");
    put({ ...opening, pairs: value === "known" ? 1 : value === "several" });
  };
  return (
    <>
      <ChoiceField
        label="Those who say yes"
        value={counted ? "known" : pairs === false || pairs === 0 ? "alone" : "several"}
        choices={together}
        onChange={choose}
      />
      {counted ? (
        <NumberField
          path="outlook.opening.pairs"
          label="Pairs who come or stay away together"
          unit="pairs"
          range={{ least: 1, most: 500, whole: true }}
          value={pairs}
          put={(count) => put({ ...opening, pairs: count })}
        />
      ) : null}
    </>
  );
}

function CostFields({ opening, put }: Props) {
  const dropTyped = useDropTyped();
  const { costs, ...others } = opening;
  return (
    <>
      <TickField
        label="Weigh a person sent home against an empty mat"
        checked={costs !== undefined}
        put={(weigh) => {
          dropTyped("outlook.opening.costs");
          put(weigh ? { ...others, costs: { turnedAway: "10", emptyMat: "5" } } : others);
        }}
      />
      {costs === undefined ? null : (
        <>
          <MoneyField
            path="outlook.opening.costs.turnedAway"
            label="Sending one home costs you"
            help="As you feel it"
            per="a person"
            value={costs.turnedAway}
            put={(turnedAway) => put({ ...opening, costs: { ...costs, turnedAway } })}
          />
          <MoneyField
            path="outlook.opening.costs.emptyMat"
            label="An empty mat costs you"
            per="a mat"
            value={costs.emptyMat}
            put={(emptyMat) => put({ ...opening, costs: { ...costs, emptyMat } })}
          />
        </>
      )}
    </>
  );
}

const PEOPLE = { least: 0, most: 10_000, whole: true };

function HappenedFields({ opening, put, returns }: Props & { readonly returns: number }) {
  const dropTyped = useDropTyped();
  const { happened, ...others } = opening;
  const set = (part: Partial<NonNullable<typeof happened>>) =>
    put({ ...opening, happened: { accepted: 0, came: 0, ...happened, ...part } });
  return (
    <>
      <TickField
        label="It has been: write down what happened"
        checked={happened !== undefined}
        put={(been) => {
          dropTyped("outlook.opening.happened");
          put(been ? { ...others, happened: { accepted: 0, came: 0 } } : others);
        }}
      />
      {happened === undefined ? null : (
        <>
          <NumberField
            path="outlook.opening.happened.accepted"
            label="Were accepted"
            unit="people"
            range={PEOPLE}
            value={happened.accepted}
            put={(accepted) => set({ accepted })}
          />
          <NumberField
            path="outlook.opening.happened.came"
            label="Of them came"
            unit="people"
            range={PEOPLE}
            value={happened.came}
            put={(came) => set({ came })}
          />
          <OptionalNumberField<undefined>
            path="outlook.opening.happened.returned"
            label="Of those who came, came again"
            help="Leave it empty until three weeks are over"
            unit="people"
            range={PEOPLE}
            none={undefined}
            value={happened.returned}
            put={(returned) =>
              put({
                ...opening,
                happened: {
                  accepted: happened.accepted,
                  came: happened.came,
                  ...(returned === undefined ? {} : { returned }),
                },
              })
            }
          />
          <PercentField
            path="outlook.opening.returns"
            label="Of 100 who come, so many you thought would come again"
            guessable
            value={returns}
            put={(share) => put({ ...opening, returns: share })}
          />
        </>
      )}
    </>
  );
}
