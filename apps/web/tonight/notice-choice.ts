import type { NoticeRule } from "#core/notice";

export type NoticeName = "hours" | "day" | "noon";

/** The three clocks that a class is usually held to; 24 hours unless she says otherwise. */
export const noticeRules: Readonly<Record<NoticeName, NoticeRule>> = {
  hours: { kind: "elapsed", hours: 24 },
  day: { kind: "days", days: 1 },
  noon: { kind: "clock", daysBefore: 0, at: "12:00" },
};

export const noticeChoices: readonly { readonly value: NoticeName; readonly label: string }[] = [
  { value: "hours", label: "24 hours before it starts" },
  { value: "day", label: "the same time on the day before" },
  { value: "noon", label: "noon of the same day" },
];
