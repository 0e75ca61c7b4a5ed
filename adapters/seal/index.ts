export { keySealer } from "./key-sealer.ts";
export { openKeyFile } from "./open-key-file.ts";
