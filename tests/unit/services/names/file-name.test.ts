import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nodeFiles } from '../../../../app/services/files/file-layer.ts';
import { nameProblem, stemFor } from '../../../../app/services/names/file-name.ts';
import { freeName } from '../../../../app/services/names/free-name.ts';
import { temporaryFolder } from '../../../temporary-folder.ts';

describe('the file name for a title', () => {
  it.each([
    ['Moth at the window', 'Moth at the window'],
    ['Сова и Λύρα', 'Сова и Λύρα'],
    ['A/B: fox?', 'A B fox'],
    ['../../etc/passwd', 'etc passwd'],
    ['  ends with a dot. ', 'ends with a dot'],
    ['.hidden', 'hidden'],
    ['...', 'Design'],
    ['', 'Design'],
    ['CON', 'CON design'],
    ['com1.first', 'com1 design'],
    ['Conifer', 'Conifer'],
    ['two\nlines\u0000', 'two lines'],
  ])('%j becomes %j', (title, stem) => {
    expect(stemFor(title)).toBe(stem);
  });

  it('is one that every platform takes, whatever the title', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (title) => {
        expect(nameProblem(`${stemFor(title)}.larkrow`)).toBeNull();
      }),
      { seed: 11, numRuns: 2000 },
    );
  });

  it('is cut between whole characters where the title is long', () => {
    const stem = stemFor('🦊'.repeat(200));
    expect(Buffer.byteLength(stem)).toBe(200);
    expect(stem).toBe('🦊'.repeat(50));
  });
});

describe('a name that a person types', () => {
  // Reserved characters and device names: common practice, as Windows documents them for its file names.
  it.each([
    '',
    ' ',
    '.',
    '..',
    'a/b',
    'a\\b',
    'a:b',
    'a\u0000b',
    'a\nb',
    '.hidden',
    'dot.',
    'space ',
    'NUL.larkrow',
    'lpt9',
    'x'.repeat(256),
  ])('%j is refused with a sentence', (name) => {
    expect(nameProblem(name)).toMatchObject({ code: 'bad-name', sentence: expect.stringMatching(/\.$/) });
  });

  it.each(['Fox.larkrow', 'Fox 2.pdf', 'console.png', 'ж'.repeat(127), 'x'.repeat(255)])(
    '%j is taken',
    (name) => {
      expect(nameProblem(name)).toBeNull();
    },
  );
});

describe('a free name', () => {
  it('counts on where names are taken, and takes capitals for small letters', async () => {
    const folder = temporaryFolder();
    expect(await freeName(nodeFiles, folder, 'Fox', '.larkrow')).toBe('Fox.larkrow');
    writeFileSync(join(folder, 'fox.LARKROW'), '');
    expect(await freeName(nodeFiles, folder, 'Fox', '.larkrow')).toBe('Fox 2.larkrow');
    writeFileSync(join(folder, 'Fox 2.larkrow'), '');
    expect(await freeName(nodeFiles, folder, 'Fox', '.larkrow')).toBe('Fox 3.larkrow');
    expect(await freeName(nodeFiles, folder, 'Fox', '.larkrow', 'Fox 2.larkrow')).toBe('Fox 2.larkrow');
  });
});
