import type { PDFDocumentProxy } from "pdfjs-dist";

/** A PDF as another program reads it: pages, words, tags and lines. */
export async function readPdf(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  const { getDocument } = await import("pdfjs-dist/legacy/build/pdf.mjs");
  // a copy, because the reader takes the bytes for itself
  return getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
}

/** All words of a page, in the order in which they are written; spaces that bind are plain ones. */
export async function wordsOfPage(document: PDFDocumentProxy, number: number): Promise<string> {
  const content = await (await document.getPage(number)).getTextContent();
  const words = content.items.map((it) => ("str" in it ? it.str : ""));
  return words.join(" ").replace(/\s+/g, " ");
}
