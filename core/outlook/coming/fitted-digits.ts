/** Digits of a fitted figure that every machine finds alike: the best fit is level at its top. */
export const FITTED_DIGITS = 7;
