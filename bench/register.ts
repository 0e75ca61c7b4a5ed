// How fast the running record keeps what is done, on both stores, beside the bare database doing as many durable
// transactions of one row in the same run.
// npm run bench -- register [--json] [--users 50] [--actions 2000] [--rounds 2] [--past 100000]
// [--store SQLite|PostgreSQL: only that one]
import { parseArgs } from "node:util";
import { wallClock } from "./clock.ts";
import { machineNow } from "./machine.ts";
import { registerInWords } from "./register-in-words.ts";
import { measureStores } from "./register-store.ts";

const { values } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    users: { type: "string", default: "50" },
    actions: { type: "string", default: "2000" },
    rounds: { type: "string", default: "2" },
    past: { type: "string", default: "100000" },
    store: { type: "string", default: "" },
  },
});

const order = {
  users: Number(values.users),
  actions: Number(values.actions),
  rounds: Number(values.rounds),
  past: Number(values.past),
  only: values.store,
};
const stores = await measureStores(order, wallClock);
const record = { bench: "register", machine: machineNow(), ...order, stores };
console.log(values.json ? JSON.stringify(record, null, 2) : registerInWords(stores));
