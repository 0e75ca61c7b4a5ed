import { type PracticeHere, usePractice } from "../drafts/use-practice.ts";
import { type RecordOpen, useRecord } from "../record/use-record.ts";
import { useSessionLook } from "../record/use-session-look.ts";
import { useRun, useWriter } from "../tonight/register-here.ts";
import { useNow } from "../tonight/use-now.ts";
import { wrongHere, type WrongHere } from "./wrong-here.ts";

export type WrongOpen = {
  readonly practice: PracticeHere;
  readonly record: RecordOpen;
  /** whether the server was asked for a session that is not on this device */
  readonly looked: boolean;
  /** null while the session is not found */
  readonly here: WrongHere | null;
};

/** A session with all that the screen of what goes wrong, and its papers, rest on. */
export function useWrongHere(practiceId: string, id: string): WrongOpen {
  const practice = usePractice(practiceId);
  const { locale } = practice.practice;
  const record = useRecord(practiceId, locale);
  const { session, looked } = useSessionLook(record, id);
  const writer = useWriter(locale);
  const now = useNow();
  const running = useRun(record);
  const here =
    session === undefined
      ? null
      : wrongHere({ practiceId, id, session, record, locale, writer, now, ...running }, practice);
  return { practice, record, looked, here };
}
