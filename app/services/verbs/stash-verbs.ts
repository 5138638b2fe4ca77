/** The yarns that the maker owns. */
import type { Handlers } from '../handlers.ts';
import { readStash, writeStash } from '../kept/keep-stash.ts';
import type { Studio } from '../studio.ts';

type StashVerb = Extract<keyof Handlers, `stash.${string}`>;

export function stashVerbs({ files, home, inTurn }: Studio): Pick<Handlers, StashVerb> {
  const folder = home.config;
  return {
    'stash.read': () => inTurn('stash', () => readStash(files, folder)),
    'stash.write': ({ entries }) => inTurn('stash', () => writeStash(files, folder, entries)),
  };
}
