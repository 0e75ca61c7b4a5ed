/**
 * Work of one name is done one after another, in the order in which it came; other names do not wait for it. One
 * server so never races with itself for the last mat; what another program does is caught by the store.
 */
export type InTurn = <Value>(name: string, work: () => Promise<Value>) => Promise<Value>;

export function turns(): InTurn {
  const last = new Map<string, Promise<unknown>>();
  return async (name, work) => {
    const before = last.get(name) ?? Promise.resolve();
    // the one before answers to whoever asked for it, also when it failed
    const mine = before.then(work, work);
    last.set(name, mine);
    try {
      return await mine;
    } finally {
      if (last.get(name) === mine) last.delete(name);
    }
  };
}
