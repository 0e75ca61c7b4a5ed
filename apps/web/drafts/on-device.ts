/** What is kept on this device, under one prefix. A browser that refuses storage keeps nothing and says so. */
const PREFIX = "hallful:";

export function keepOnDevice(key: string, value: unknown): boolean {
  try {
    localStorage.setItem(PREFIX + key, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

export function readOnDevice(key: string): unknown {
  try {
    const text = localStorage.getItem(PREFIX + key);
    return text === null ? null : JSON.parse(text);
  } catch {
    return null;
  }
}

export function dropOnDevice(key: string): void {
  try {
    localStorage.removeItem(PREFIX + key);
  } catch {
    // nothing was kept, so nothing is left
  }
}

/** The keys that begin with `start`, without the common prefix. */
export function keysOnDevice(start: string): readonly string[] {
  const keys: string[] = [];
  try {
    for (let index = 0; index < localStorage.length; index += 1) {
      const key = localStorage.key(index);
      if (key?.startsWith(PREFIX + start)) keys.push(key.slice(PREFIX.length));
    }
  } catch {
    return [];
  }
  return keys;
}
