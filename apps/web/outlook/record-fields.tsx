import { checkHappened } from "#app/actions";
import { datesInWords } from "#app/views";
import type { ClassDocument } from "#core/class";
import type { HappenedDocument } from "#core/outlook";
import type { Locale, PracticeDocument, Problem } from "#core/words";
import { type ReactNode, useCallback, useMemo, useRef, useState } from "react";
import type { Draft } from "../drafts/draft.ts";
import type { Opened } from "../drafts/use-draft.ts";
import { type Form, FormOf } from "../fields/form.tsx";
import { OptionalNumberField } from "../fields/number-field.tsx";
import { currencyOf } from "../hall/hall-form.ts";
import { SaveBar } from "../parts/save-bar.tsx";
import { AddSession } from "./add-session.tsx";
import { SessionRow } from "./session-row.tsx";

type Props = {
  readonly opened: Opened<HappenedDocument>;
  readonly document: Pick<ClassDocument, "weekday" | "year">;
  readonly practice: PracticeDocument;
  readonly places: number | null;
  /** what else brings sessions in, like a file */
  readonly importing?: ReactNode;
};

/** So many sessions are on the page until she asks for all. */
const SHOWN = 4;

/** The record of a class: the sessions that were held, the last one first, to write down and to mend. */
export function RecordFields({ opened, document, practice, places, importing }: Props) {
  const { draft, keeper } = opened;
  const record = draft.document;
  const [all, setAll] = useState(false);
  const list = useRef<HTMLOListElement>(null);
  const problems = useMemo(() => problemsOf(record, practice.locale), [record, practice.locale]);
  // in the order of writing, so that a row stays where it is while its date is typed
  const newest = record.sessions.map((_, at) => at).toReversed();
  const wrong = new Set(problems.map(({ place }) => /^sessions\[(\d+)/.exec(place)?.[1]));
  // what is wrong is always on the page
  const shown = newest.filter((at, rank) => all || rank < SHOWN || wrong.has(String(at)));
  const put = useCallback(
    (recipe: (before: HappenedDocument) => HappenedDocument) => keeper.change(recipe),
    [keeper],
  );
  const takeAway = useCallback(
    (at: number) => {
      keeper.dropTyped("sessions[");
      keeper.change((before) => ({
        ...before,
        sessions: before.sessions.filter((_, other) => other !== at),
      }));
      // the button that was pressed is gone
      list.current?.focus();
    },
    [keeper],
  );
  return (
    <FormOf form={useRecordForm(opened, practice, problems)}>
      <fieldset className="fields record">
        <legend>What really happened</legend>
        <div className="record-save">
          <SaveBar what="The record" draft={inWords(draft, practice.locale)} keeper={keeper} />
        </div>
        <OptionalNumberField<undefined>
          path="capacity"
          label="Places on an ordinary evening"
          help={places === null ? "" : `The mat plan now has ${places}`}
          unit="places"
          range={{ least: 1, most: 1000, whole: true }}
          none={undefined}
          value={record.capacity}
          put={(capacity) => put((before) => withPlaces(before, capacity))}
        />
        <AddSession record={record} document={document} practice={practice} places={places} put={put} />
        {importing}
        {record.sessions.length === 0 ? <p className="soft">No session is written down yet.</p> : null}
        <ol
          ref={list}
          tabIndex={-1}
          className="list-plain sessions"
          aria-label="Sessions, the last one first"
        >
          {shown.map((at) => {
            const session = record.sessions[at];
            return session === undefined ? null : (
              <SessionRow
                key={at}
                at={at}
                session={session}
                locale={practice.locale}
                put={put}
                takeAway={takeAway}
              />
            );
          })}
        </ol>
        {newest.length > SHOWN ? (
          <button type="button" className="link-button" aria-expanded={all} onClick={() => setAll(!all)}>
            {all ? `Show the last ${SHOWN} only` : `Show all ${newest.length} sessions`}
          </button>
        ) : null}
      </fieldset>
    </FormOf>
  );
}

function withPlaces(record: HappenedDocument, places: number | undefined): HappenedDocument {
  const { capacity: _, ...others } = record;
  return places === undefined ? others : { ...others, capacity: places };
}

function problemsOf(record: HappenedDocument, locale: Locale): readonly Problem[] {
  const read = checkHappened(record);
  return read.ok ? [] : datedInWords(read.problems, locale);
}

/** The record as it is kept, why it was refused told with its dates in words. */
function inWords(draft: Draft<HappenedDocument>, locale: Locale): Draft<HappenedDocument> {
  const { state } = draft;
  if (state.kind !== "refused") return draft;
  return { ...draft, state: { ...state, problems: datedInWords(state.problems, locale) } };
}

function datedInWords(problems: readonly Problem[], locale: Locale): readonly Problem[] {
  return problems.map((it) => ({ ...it, says: datesInWords(it.says, locale) }));
}

function useRecordForm(
  {
    draft,
    keeper,
  }: { readonly draft: Draft<HappenedDocument>; readonly keeper: Opened<HappenedDocument>["keeper"] },
  practice: PracticeDocument,
  problems: readonly Problem[],
): Form {
  const { typed } = draft;
  const currency = currencyOf(practice.currency);
  return useMemo(
    () => ({
      currency,
      typed,
      type: keeper.type,
      dropTyped: keeper.dropTyped,
      problems,
      isGuess: null,
      setGuess: () => undefined,
    }),
    [typed, keeper, currency, problems],
  );
}
