import type { Paper } from "#core/papers";
import { PaperMarks } from "./paper-marks.tsx";

/**
 * The pages as they print, each in its true size on paper. Whoever hears the page read has the same words above, so
 * here each page is one picture.
 */
export function PaperPages({ paper }: { readonly paper: Paper }) {
  const { pages, width, height, size } = paper;
  const lies = width > height ? "lying" : "upright";
  return (
    <div className="paper-pages">
      {pages.map(({ parts }, index) => (
        <svg
          key={index}
          className={`paper-page paper-${size}-${lies}`}
          viewBox={`0 0 ${width} ${height}`}
          preserveAspectRatio="xMinYMin slice"
          role="img"
          aria-label={`Page ${index + 1} of ${pages.length} as it prints; its words stand above`}
        >
          <rect className="paper-paper" width={width} height={height} />
          {parts.map((part, at) => (
            <PaperMarks key={at} marks={part.marks} />
          ))}
        </svg>
      ))}
    </div>
  );
}
