/** The imprint that the studio on this machine keeps. */
import type { Imprint } from '../../shared/pattern/imprint.ts';
import { good, type Result } from '../../shared/result.ts';
import { nodeFiles } from '../services/files/file-layer.ts';
import { homeHere } from '../services/home/home.ts';
import { readImprint } from '../services/kept/keep-imprint.ts';
import type { Terminal } from './cli-verb.ts';

export async function keptImprint(terminal: Terminal): Promise<Result<Imprint>> {
  const read = await readImprint(nodeFiles, homeHere().config);
  if (!read.ok) return read;
  if (read.value.notice) terminal.remark(`${read.value.notice}\n`);
  return good(read.value.imprint);
}
