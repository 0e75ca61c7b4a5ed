type Props = {
  readonly marks: readonly { readonly kind: "cross" | "inked" | "way"; readonly says: string }[];
};

/** What the marks on a plan mean. */
export function MarkKey({ marks }: Props) {
  return (
    <ul className="list-plain mark-key">
      {marks.map(({ kind, says }) => (
        <li key={kind}>
          <svg viewBox="0 0 24 24" aria-hidden="true">
            {kind === "way" ? (
              <g className="ways">
                <path className="way-band" d="M0 12H24" strokeWidth={14} />
                <path className="way-line" d="M0 12H24" />
              </g>
            ) : (
              <g>
                <path className="floor-mat" d="M7 2H17V22H7Z" />
                {kind === "cross" ? (
                  <path className="mat-cross" d="M7 2L17 22M17 2L7 22" />
                ) : (
                  <path className="mat-inked" d="M7 2H17V22H7Z" />
                )}
              </g>
            )}
          </svg>
          {says}
        </li>
      ))}
    </ul>
  );
}
