type Props = {
  readonly label: string;
  readonly guess: boolean;
  readonly onChange: (guess: boolean) => void;
};

/** The pencil mark at a figure, which says whether it is a guess and changes that. */
export function GuessMark({ label, guess, onChange }: Props) {
  const says = guess ? "guess" : "known";
  return (
    <button
      type="button"
      className="guess-mark"
      data-guess={guess || undefined}
      aria-label={`${label}: ${says}, press to mark it as ${guess ? "known" : "a guess"}`}
      onClick={() => onChange(!guess)}
    >
      {says}
    </button>
  );
}
