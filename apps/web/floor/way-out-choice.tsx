type Props = {
  readonly wayOut: boolean | undefined;
  readonly onChoose: (wayOut: boolean | undefined) => void;
};

const marks = [
  { value: "unsaid", wayOut: undefined, words: "not said" },
  { value: "yes", wayOut: true, words: "a way out in an emergency" },
  { value: "no", wayOut: false, words: "not a way out" },
] as const;

/** Whether a door counts where ways out are looked for and their widths added up. */
export function WayOutChoice({ wayOut, onChoose }: Props) {
  return (
    <label className="floor-length">
      <span className="field-label">In an emergency</span>
      <select
        className="field-box"
        value={marks.find((it) => it.wayOut === wayOut)?.value}
        onChange={(event) => {
          const chosen = marks.find((it) => it.value === event.target.value);
          if (chosen !== undefined) onChoose(chosen.wayOut);
        }}
      >
        {marks.map(({ value, words }) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
}
