/** The design that a call names, as it is or as it was when the edition that is asked for was published. */
import type { Design } from '../../shared/design/design.ts';
import { limits } from '../../shared/design/limits.ts';
import { designOfEdition } from '../../shared/pattern/editions/edition.ts';
import type { Result } from '../../shared/result.ts';
import type { Terminal, Words } from './cli-verb.ts';
import { readDesign } from './read-design.ts';
import { count } from './words.ts';

/** The file is the first word; `--edition` is a number, or absent. */
export async function readEdition(words: Words, terminal: Terminal): Promise<Result<Design>> {
  const edition = count(words, 'edition', limits.editions);
  if (!edition.ok) return edition;
  const read = await readDesign(terminal, words.positionals[0]!);
  return read.ok && edition.value !== null ? designOfEdition(read.value, edition.value) : read;
}
