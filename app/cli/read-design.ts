/** The design in a file that was named on the command line, or in a pattern; a problem names the file. */
import type { Design } from '../../shared/design/design.ts';
import { limits } from '../../shared/design/limits.ts';
import { readDesignBytes } from '../../shared/design/read-design.ts';
import { good, problem, type Result } from '../../shared/result.ts';
import { nodeFiles } from '../services/files/file-layer.ts';
import { readFileWithin } from '../services/files/read-file-within.ts';
import { designInPdf, isPdf, patternTooLarge } from '../services/pdf-in/design-in-pdf.ts';
import type { Terminal } from './cli-verb.ts';

export async function readDesign(terminal: Terminal, given: string): Promise<Result<Design>> {
  const read = await readEither(terminal.path(given));
  if (read.ok) return read;
  const { code, sentence } = read.problem;
  return problem(code, sentence.includes('“') ? sentence : `${given}: ${sentence}`);
}

/** What a file is, its first bytes say. */
async function readEither(path: string): Promise<Result<Design>> {
  const file = await readFileWithin(nodeFiles, path, limits.patternBytes, patternTooLarge);
  if (!file.ok) return file;
  const { bytes } = file.value;
  if (!isPdf(bytes)) return readDesignBytes(bytes);
  const inside = designInPdf(bytes);
  return inside.ok ? good(inside.value.design) : inside;
}
