/** The motifs that are kept for every design, one deed after the other. */
import { join } from 'node:path';
import { good, type Result } from '../../../shared/result.ts';
import { bin } from '../bin/bin.ts';
import { attempt } from '../files/attempt.ts';
import { errorCode } from '../files/error-code.ts';
import type { Handlers } from '../handlers.ts';
import { keepMotif, listMotifs, motifPath, notKept, renameMotif } from '../kept/keep-motifs.ts';
import type { Studio } from '../studio.ts';

type MotifVerb = Extract<keyof Handlers, `motifs.${string}`>;

export function motifVerbs(studio: Studio): Pick<Handlers, MotifVerb> {
  const { files, home, inTurn } = studio;
  const folder = join(home.config, 'motifs');
  return {
    'motifs.list': () => inTurn(folder, () => listMotifs(files, folder)),
    'motifs.keep': ({ motif }) => inTurn(folder, () => keepMotif(files, folder, motif)),
    'motifs.rename': ({ id, name }) => inTurn(folder, () => renameMotif(files, folder, id, name)),
    'motifs.remove': ({ id }) => inTurn(folder, () => removeMotif(studio, motifPath(folder, id))),
  };
}

async function removeMotif(studio: Studio, path: string): Promise<Result<Record<string, never>>> {
  const there = await studio.files.factsOf(path).catch((error: unknown) => errorCode(error));
  if (there === 'ENOENT') return notKept;
  const moved = await attempt(path, 'was not moved to the bin', () => bin(studio, path));
  return moved.ok ? good({}) : moved;
}
