/** A folder of its own for each test, without links in its path, and gone afterwards. */
import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

export function temporaryFolder(): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'larkrow-test-')));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
