import type { PriceSheet } from "#app/views";
import type { PracticeDocument } from "#core/words";
import { useMemo } from "react";
import type { ClassPart } from "../class-sheet/class-part.ts";
import { PartWorking } from "../class-sheet/part-working.tsx";
import { SheetSection } from "../class-sheet/sheet-section.tsx";
import type { Draft } from "../drafts/draft.ts";
import { TickField } from "../fields/tick-field.tsx";
import { currencyOf } from "../hall/hall-form.ts";
import { wholeMoney } from "../words/money-words.ts";
import { AskedAnswer } from "./asked-answer.tsx";
import { HourPlot } from "./hour-plot.tsx";
import { StudioFields } from "./studio-fields.tsx";
import { studioOffer } from "./studio-offer.ts";
import type { WorkerAnswer } from "./use-worker-answer.ts";

type Props = ClassPart & {
  readonly practice: PracticeDocument;
  readonly asked: WorkerAnswer<PriceSheet>;
  readonly typed: Draft<unknown>["typed"];
};

/** Her own class against a studio's, by the hour from door to door. */
export function StudioSection({ document, change, practice, asked, typed }: Props) {
  const part = asked.answer?.studio;
  const { currency, locale } = practice;
  const ready = part?.kind === "ready" ? part : null;
  const plot = useMemo(
    () =>
      ready === null ? null : (
        <HourPlot part={ready} money={(major) => wholeMoney(major, currency, locale)} />
      ),
    [ready, currency, locale],
  );
  const { planning, guesses } = document;
  const tick = (wanted: boolean) => {
    const { studio: _, ...others } = planning ?? {};
    const known = guesses.filter((it) => !it.startsWith("planning.studio"));
    change(
      wanted
        ? {
            planning: { ...others, studio: studioOffer(document, currencyOf(currency)) },
            guesses: [...known, "planning.studio"],
          }
        : { planning: others, guesses: known },
    );
  };
  return (
    <SheetSection
      id="studio"
      title="Own class or studio"
      answer={<AskedAnswer asked={asked} part={part} typed={typed} fields={["planning.studio"]} />}
      picture={plot}
      working={part === undefined ? null : <PartWorking parts={[part]} />}
      inputs={
        <>
          <TickField
            label="Compare with what a studio offers"
            checked={planning?.studio !== undefined}
            put={tick}
          />
          {planning?.studio === undefined ? null : (
            <StudioFields
              studio={planning.studio}
              currency={currencyOf(currency)}
              put={(studio) => change({ planning: { ...planning, studio } })}
            />
          )}
        </>
      }
    />
  );
}
