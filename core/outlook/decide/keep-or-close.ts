// 12 teaching weeks with a September in them, one chance in ten that it ever pays, 40 lost next term: close.
// Never: advice before four sessions, or firm advice on a spring alone.

/** What is known of a class at a date on which the hall can be given notice; amounts in minor units. */
export type KeepQuestion = {
  readonly sessionsHeld: number;
  /** a January or a September is among them, when people begin */
  readonly intakeSeen: boolean;
  /** some number of people that the hall takes pays for a session and its best other use */
  readonly canPay: boolean;
  /** P(plateau ≥ n*) */
  readonly plateauChance: number;
  /** expected contribution of the next term, after the notice has run out */
  readonly goingOn: number;
  /** what the best other use of the same slots would bring */
  readonly otherUse: number;
  /** what ending costs: refunds owed, a deposit lost */
  readonly exitCost: number;
};

export type KeepAdvice = {
  readonly kind: "too early" | "keep" | "change" | "close";
  /** enough was seen to act on it */
  readonly firm: boolean;
};

export const FEWEST_SESSIONS = 4;
export const FIRM_SESSIONS = 10;
/** Below this chance of ever paying a class is closed rather than waited for. */
export const CLOSE_BELOW = 0.25;
/** From this chance on a thin term is patience, not a fault. */
export const PATIENT_FROM = 0.5;

/**
 * Keep, change or close. Close when the chance that the class comes to pay is below a quarter and the next term is
 * worth less than its end; keep when the next term is worth more, or patience is likely to pay; else change something
 * first: the price, the hall, the hour; always so where not even a full hall would pay. Firm after ten teaching weeks with a January or September. Method: methods 5,
 * trade F16.
 */
export function keepOrClose(question: KeepQuestion): KeepAdvice {
  const { sessionsHeld, intakeSeen, canPay, plateauChance, goingOn, otherUse, exitCost } = question;
  if (sessionsHeld < FEWEST_SESSIONS) return { kind: "too early", firm: false };
  const firm = sessionsHeld >= FIRM_SESSIONS && intakeSeen;
  if (!canPay) return { kind: "change", firm };
  const worthMore = goingOn >= otherUse - exitCost;
  if (plateauChance < CLOSE_BELOW) return { kind: worthMore ? "change" : "close", firm };
  return { kind: worthMore || plateauChance >= PATIENT_FROM ? "keep" : "change", firm };
}
