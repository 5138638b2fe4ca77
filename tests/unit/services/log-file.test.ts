import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { logFile } from '../../../app/services/log-file.ts';
import { temporaryFolder } from '../../temporary-folder.ts';

const now = () => new Date('2031-03-05T14:07:09Z');

describe('the log', () => {
  it('grows by a line with its time', () => {
    const folder = join(temporaryFolder(), 'config');
    const said: string[] = [];
    const log = logFile(folder, now, (line) => said.push(line));
    log('one');
    log('two');
    expect(readFileSync(join(folder, 'larkrow.log'), 'utf8')).toBe(
      '2031-03-05T14:07:09.000Z one\n2031-03-05T14:07:09.000Z two\n',
    );
    expect(said).toEqual(['one', 'two']);
  });

  it('never grows long', () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'larkrow.log'), 'x'.repeat(1024 * 1024 + 1));
    logFile(folder, now, () => {})('one');
    expect(readdirSync(folder).sort()).toEqual(['larkrow before.log', 'larkrow.log']);
    expect(readFileSync(join(folder, 'larkrow.log'), 'utf8')).toMatch(/ one\n$/);
  });

  it('that can’t be written stops nobody', () => {
    const folder = join(temporaryFolder(), 'file');
    writeFileSync(folder, '');
    expect(() => logFile(folder, now, () => {})('one')).not.toThrow();
  });
});
