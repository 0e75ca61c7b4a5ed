export type { Kept, PracticeWhole, Removal, Save, Store } from "./store.ts";
