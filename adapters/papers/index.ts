export { pdfPapers } from "./pdf-papers.ts";
