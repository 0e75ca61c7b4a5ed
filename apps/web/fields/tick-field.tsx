type Props = {
  readonly label: string;
  readonly checked: boolean;
  readonly put: (checked: boolean) => void;
};

/** Something that is so or is not. */
export function TickField({ label, checked, put }: Props) {
  return (
    <label className="tick">
      <input type="checkbox" checked={checked} onChange={(event) => put(event.target.checked)} />
      {label}
    </label>
  );
}
