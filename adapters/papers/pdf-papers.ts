import type { Papers } from "#app/ports";
import type { Paper, PaperPart } from "#core/papers";
import { openFaces } from "./faces.ts";
import { drawMark, type Pen } from "./draw-mark.ts";
import { inPoints } from "./points.ts";

/**
 * Papers as PDF: the marks where they are, the face embedded, and tags, so that a screen reader hears title, headings,
 * lists and what a drawing shows in their order. The same paper is the same file, byte for byte.
 */
export function pdfPapers(): Papers {
  return { pdf };
}

async function pdf(paper: Paper): Promise<Uint8Array> {
  // 200 ms to load, and most commands never print
  const { default: PdfDocument } = await import("pdfkit");
  const faces = openFaces();
  const document = new PdfDocument({
    size: [inPoints(paper.width), inPoints(paper.height)],
    margin: 0,
    autoFirstPage: false,
    pdfVersion: "1.7",
    tagged: true,
    lang: paper.language,
    displayTitle: true,
    // no standard face: every letter is embedded
    font: "",
    info: {
      Title: paper.title,
      Creator: "Hallful",
      Producer: "Hallful",
      CreationDate: new Date(`${paper.madeOn}T12:00:00Z`),
    },
  });
  const chunks: Buffer[] = [];
  document.on("data", (chunk: Buffer) => chunks.push(chunk));
  const ended = new Promise<void>((done, fail) => {
    document.on("end", () => done());
    document.on("error", fail);
  });
  for (const { name, data } of faces.files) document.registerFont(name, data);
  writePages(document, paper, { document, faces });
  document.end();
  await ended;
  return Buffer.concat(chunks);
}

type Structure = PDFKit.PDFDocument;

function writePages(document: Structure, paper: Paper, pen: Pen): void {
  const whole = document.struct("Document");
  document.addStructure(whole);
  for (const { parts } of paper.pages) {
    document.addPage({ size: [inPoints(paper.width), inPoints(paper.height)], margin: 0 });
    let list: PDFKit.PDFStructureElement | null = null;
    for (const part of parts) {
      if (part.role !== "item") {
        list?.end();
        list = null;
        writePart(document, whole, part, pen);
        continue;
      }
      if (list === null) {
        list = document.struct("L");
        whole.add(list);
      }
      const body = document.struct("LBody", {}, [() => drawAll(part, pen)]);
      list.add(document.struct("LI", {}, [body]));
    }
    list?.end();
  }
  whole.end();
}

const tags = { title: "H1", heading: "H2", paragraph: "P" } as const;

function writePart(document: Structure, whole: PDFKit.PDFStructureElement, part: PaperPart, pen: Pen): void {
  const draw = () => drawAll(part, pen);
  switch (part.role) {
    case "frame":
      document.markContent("Artifact", { type: "Layout" });
      draw();
      document.endMarkedContent();
      return;
    case "figure":
      whole.add(document.struct("Figure", { alt: part.says }, [draw]));
      return;
    case "item":
      throw new Error("an item stands in its list");
    case "title":
    case "heading":
    case "paragraph":
      whole.add(document.struct(tags[part.role], {}, [draw]));
  }
}

function drawAll({ marks }: PaperPart, pen: Pen): void {
  for (const mark of marks) drawMark(mark, pen);
}
