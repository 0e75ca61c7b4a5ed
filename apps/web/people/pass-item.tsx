import { freeOf, type PassState } from "#core/books";
import { Show } from "../parts/show.tsx";
import { screenWriter } from "../record/screen-writer.ts";
import { DoneWords } from "./done-words.tsx";
import { ExtendForm } from "./extend-form.tsx";
import { HandOnForm } from "./hand-on-form.tsx";
import { HeldAhead } from "./held-ahead.tsx";
import { passWords, termsWords } from "./pass-words.ts";
import type { PassesHere } from "./passes-part.tsx";
import { PauseForm, ResumeForm } from "./pause-form.tsx";
import { PayForm } from "./pay-form.tsx";
import { RefundForm } from "./refund-form.tsx";
import { RunOut } from "./run-out.tsx";
import { SwapForm } from "./swap-form.tsx";
import { todayHere } from "./today-here.ts";
import { type Doing, useDoing } from "./use-doing.ts";
import { usedWords } from "./used-words.ts";

/** A pass and what is done to it, as each form below is given them. */
export type PassAt = PassesHere & { readonly pass: PassState; readonly doing: Doing; readonly today: string };

/** One pass: how it stands, its terms, the dates it was used on, and all that can be done to it. */
export function PassItem(given: PassesHere & { readonly pass: PassState }) {
  const { at, classes, pass } = given;
  const { locale, zone } = at.practice;
  const doing = useDoing(at.practiceId, locale);
  const writer = screenWriter(locale);
  const today = todayHere(zone);
  const it: PassAt = { ...given, doing, today };
  return (
    <article className="pass" aria-label={pass.name}>
      <h3>{pass.name}</h3>
      {passWords(pass, today, writer).map((words) => (
        <p key={words}>{words}</p>
      ))}
      <Show summary="Its terms, and the dates it was used on">
        <ul className="listed">
          {termsWords(pass, classes, writer).map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
        <ul className="listed">
          {usedWords(pass, classes, locale).map(({ key, words }) => (
            <li key={key}>{words}</li>
          ))}
        </ul>
      </Show>
      <HeldAhead {...it} />
      <PassForms {...it} />
      <DoneWords doing={doing} />
    </article>
  );
}

function PassForms(it: PassAt) {
  const { pass, today } = it;
  // the dates of a block are its own: there is nothing to pause and no use-by to move
  const isPass = pass.form === "pass";
  const isOver = pass.pausedFrom === null && pass.useBy < today;
  return (
    <div className="stack-close">
      {pass.unpaid > 0 ? (
        <Show summary="Pay what is owed">
          <PayForm {...it} />
        </Show>
      ) : null}
      {pass.left > 0 && pass.pausedFrom !== null ? (
        <Show summary="End the pause">
          <ResumeForm {...it} />
        </Show>
      ) : null}
      {isPass && pass.left > 0 && pass.pausedFrom === null && !isOver ? (
        <Show summary="Pause it">
          <PauseForm {...it} />
        </Show>
      ) : null}
      {pass.left > 0 ? (
        <>
          {isPass ? (
            <Show summary="Give it a later use-by">
              <ExtendForm {...it} />
            </Show>
          ) : null}
          {isPass ? null : (
            <Show summary="Take one of its sessions on another date">
              <SwapForm {...it} />
            </Show>
          )}
          <Show summary="Hand it on">
            <HandOnForm {...it} />
          </Show>
          <Show summary="Give money back for what is left">
            <RefundForm {...it} />
          </Show>
        </>
      ) : null}
      {isOver && freeOf(pass) > 0 ? <RunOut {...it} /> : null}
    </div>
  );
}
