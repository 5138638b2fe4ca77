/** Deeds on the same file happen one after the other: a save must not look before another one has renamed. */

export type InTurn = <T>(path: string, deed: () => Promise<T>) => Promise<T>;

export function inTurn(): InTurn {
  const last = new Map<string, Promise<unknown>>();
  return (path, deed) => {
    const before = last.get(path) ?? Promise.resolve();
    const mine = before.then(deed, deed);
    last.set(path, mine);
    const forget = () => {
      if (last.get(path) === mine) last.delete(path);
    };
    mine.then(forget, forget);
    return mine;
  };
}
