import type { Arrangement, ArrangementRow } from "#core/hall";

type Props = {
  readonly name: string;
  readonly row: ArrangementRow;
  readonly chosen: Arrangement;
  readonly choose: (arrangement: Arrangement) => void;
};

/** Lays the mats one way; pressed where they lie so already. */
export function ChooseButton({ name, row, chosen, choose }: Props) {
  const pressed = row.arrangement === chosen;
  return (
    <button
      type="button"
      className="button"
      aria-pressed={pressed}
      aria-label={`${name}: ${pressed ? "laid so" : "lay them so"}`}
      data-disabled={pressed ? true : undefined}
      onClick={() => {
        if (!pressed) choose(row.arrangement);
      }}
    >
      {pressed ? "Laid so" : "Lay them so"}
    </button>
  );
}
