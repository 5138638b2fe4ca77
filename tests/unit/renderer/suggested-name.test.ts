import { describe, expect, it } from 'vitest';
import { nameProblem } from '../../../app/services/names/file-name.ts';
import { copyInWords, suggestedName } from '../../../renderer/flows/suggested-name.ts';
import { copyOf } from '../../../shared/pattern/copy.ts';
import { designFromLetters } from '../../notation.ts';

const usual = copyOf(designFromLetters(['ab']));

describe('the name that is proposed for a file', () => {
  it('is the title, and what the file is of', () => {
    expect(suggestedName('Moth', ' labels.pdf')).toBe('Moth labels.pdf');
  });

  it('is one that every disk takes, with all that tells it from others, however long the title is', () => {
    for (const letter of ['a', 'Ω', 'Щ', '字', '👩‍👩‍👧']) {
      const name = suggestedName(letter.repeat(200), ' Letter greys, large print.pdf');
      expect(nameProblem(name)).toBeNull();
      expect(name.endsWith(' Letter greys, large print.pdf')).toBe(true);
      expect(name.startsWith(letter)).toBe(true);
    }
  });

  it('holds nothing that some platform refuses, whatever title and buyer hold', () => {
    for (const title of ['A/B: “fox”?', '.hidden', '...', '', 'half a pair \ud83e', 'two\nlines']) {
      const copy = copyInWords({ ...usual, preparedFor: `${'👩‍👩‍👧'.repeat(30)} <a/b>` }, 'a4');
      expect(nameProblem(suggestedName(title, ` ${copy}.pdf`))).toBeNull();
      expect(nameProblem(suggestedName(title, '.larkrow'))).toBeNull();
    }
    expect(suggestedName('A/B: fox', ' labels.pdf')).toBe('A B fox labels.pdf');
  });

  it('tells a copy by whatever is not usual of it', () => {
    expect(copyInWords(usual, 'a4')).toBe('A4');
    expect(
      copyInWords(
        { ...usual, ink: 'grey', cells: 'large', leftHanded: true, language: 'de', preparedFor: 'Ines' },
        'letter',
      ),
    ).toBe('Letter greys, large print, left-handed, Deutsch, for Ines');
  });
});
