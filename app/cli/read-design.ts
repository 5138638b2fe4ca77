/** The design in a file that was named on the command line; a problem names the file. */
import type { Design } from '../../shared/design/design.ts';
import { good, problem, type Result } from '../../shared/result.ts';
import { nodeFiles } from '../services/files/file-layer.ts';
import { readDesignFile } from '../services/files/read-design-file.ts';
import type { Terminal } from './cli-verb.ts';

export async function readDesign(terminal: Terminal, given: string): Promise<Result<Design>> {
  const read = await readDesignFile(nodeFiles, terminal.path(given));
  if (read.ok) return good(read.value.design);
  const { code, sentence } = read.problem;
  return problem(code, sentence.includes('“') ? sentence : `${given}: ${sentence}`);
}
