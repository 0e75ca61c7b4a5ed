// The page of the benchmark "drag": the floor editor alone, on the hall that the benchmark puts into the window.
import "../../look/tokens.css";
import "../../look/base.css";
import "../../look/fields.css";
import "../../look/sheet.css";
import { type HallDocument, hallDocumentSchema } from "#core/hall";
import { useState } from "react";
import { createRoot } from "react-dom/client";
import { FloorEditor } from "../index.ts";

const given: unknown = Reflect.get(window, "benchHall");
const page = document.getElementById("page");
if (page === null) throw new Error("no place for the editor in this page");
createRoot(page).render(<DragPage begin={hallDocumentSchema.parse(given)} />);

function DragPage({ begin }: { readonly begin: HallDocument }) {
  const [hall, setHall] = useState(begin);
  return (
    <>
      <h1>{hall.name}</h1>
      <h2>The floor</h2>
      <FloorEditor document={hall} onChange={setHall} units="metric" locale="en-GB" />
    </>
  );
}
