/** Who publishes the patterns. */
import type { Handlers } from '../handlers.ts';
import { readImprint, writeImprint } from '../kept/keep-imprint.ts';
import type { Studio } from '../studio.ts';

type ImprintVerb = Extract<keyof Handlers, `imprint.${string}`>;

export function imprintVerbs({ files, home, inTurn }: Studio): Pick<Handlers, ImprintVerb> {
  const folder = home.config;
  return {
    'imprint.read': () => inTurn('imprint', () => readImprint(files, folder)),
    'imprint.write': ({ imprint }) => inTurn('imprint', () => writeImprint(files, folder, imprint)),
  };
}
