import type { HallDocument } from "#core/hall";
import type { PracticeDocument } from "#core/words";

type Props = {
  readonly document: HallDocument;
  readonly practice: PracticeDocument;
  readonly change: (part: Partial<HallDocument>) => void;
};

/** A hall brought in from a practice that counts in another currency. */
export function OtherCurrency({ document, practice, change }: Props) {
  const { currency = practice.currency } = document;
  if (currency === practice.currency) return null;
  return (
    <div className="problem-list">
      <p>
        <strong>
          These amounts are in {currency}, and the practice counts in {practice.currency}.
        </strong>{" "}
        Put the right figures in, then say so.
      </p>
      <p>
        <button type="button" className="button" onClick={() => change({ currency: practice.currency })}>
          They are in {practice.currency} now
        </button>
      </p>
    </div>
  );
}
