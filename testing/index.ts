export { oldDataFileVersion1 } from "./old-data-file.ts";
export { storeContract } from "./store-contract.ts";
export { temporaryFolder } from "./temporary-folder.ts";
