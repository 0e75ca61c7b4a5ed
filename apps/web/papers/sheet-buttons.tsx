import { missingLetters, type Paper, type PaperSize } from "#core/papers";
import { ChoiceField } from "../fields/choice-field.tsx";

type Props = {
  readonly paper: Paper | null;
  /** each search for the most mats may end elsewhere */
  readonly searched: boolean;
  readonly size: PaperSize;
  readonly choose: (size: PaperSize) => void;
  /** where the server hands out the PDF; null where it has none */
  readonly address: string | null;
  /** what is on the page is saved, so that the PDF is made from the same */
  readonly saved: boolean;
};

/** To print, to take away as a file, and for which paper. */
export function SheetButtons({ paper, searched, size, choose, address, saved }: Props) {
  return (
    <div className="stack-close measure no-print">
      <ChoiceField
        label="Paper in the printer"
        value={size}
        choices={[
          { value: "a4", label: "A4" },
          { value: "letter", label: "Letter, 8 1/2 by 11 in" },
        ]}
        onChange={(value) => choose(value === "letter" ? "letter" : "a4")}
      />
      <p className="row">
        <button type="button" className="button" disabled={paper === null} onClick={() => print()}>
          Print
        </button>
        {address === null ? null : (
          <a className="button" href={address} download>
            Save as PDF
          </a>
        )}
      </p>
      {paper === null ? null : (
        <p className="small soft">
          {howItPrints(paper)} {whatThePdfIs(paper, saved, searched)}
        </p>
      )}
    </div>
  );
}

function howItPrints({ pages, width, height, scale }: Paper): string {
  const count = pages.length === 1 ? "one page" : `${pages.length} pages`;
  const lies = width > height ? ", lying" : "";
  return `It takes ${count}${lies}, drawn 1:${scale}. Print at 100 % (“actual size”) and check the scale bar with a ruler.`;
}

function whatThePdfIs(paper: Paper, saved: boolean, searched: boolean): string {
  const missing = missingLetters(paper);
  if (missing.length > 0)
    return `The PDF has no letter for ${missing.join(" ")} and would have a question mark there: print this page instead.`;
  if (!saved) return "The PDF is made from what is saved: wait until this page is.";
  if (searched)
    return "The server searches for the PDF anew and may lay mats elsewhere than this page: use one of the two, not both.";
  return "The PDF comes from the server; with no signal print this page instead.";
}
