import { cpus, loadavg } from "node:os";

export type Machine = { readonly node: string; readonly cores: number; readonly load: number };

/** Times are the product's own only where the load is below the number of cores: so both are written down. */
export function machineNow(): Machine {
  return { node: process.version, cores: cpus().length, load: Math.round((loadavg()[0] ?? 0) * 10) / 10 };
}
