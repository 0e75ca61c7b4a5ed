export { FloorEditor, type FloorEditorProps } from "./floor-editor.tsx";
export { PlanPicture } from "./plan-picture.tsx";
export { type Fitted, useMatPlan } from "./use-mat-plan.ts";
