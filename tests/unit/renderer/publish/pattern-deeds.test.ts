import { beforeEach, describe, expect, it } from 'vitest';
import {
  changeCopy,
  movePart,
  partsLeftOut,
  partsPrinted,
  printPart,
  setCover,
  usualParts,
  writeText,
} from '../../../../renderer/publish/pattern-deeds.ts';
import { undoStep } from '../../../../renderer/store/changing.ts';
import { openDesign, studio } from '../../../../renderer/store/studio.ts';
import { patternParts } from '../../../../shared/design/pattern-schema.ts';
import { designFromLetters } from '../../../notation.ts';

const design = () => studio.getState().open?.design;
const pattern = () => design()?.pattern;
const printed = () => partsPrinted(design());

beforeEach(() => openDesign(designFromLetters(['ab', 'ba']), null));

describe('the parts of a pattern', () => {
  it('are at first the usual ones in their usual order, and every other can be printed too', () => {
    expect(pattern()).toBeUndefined();
    expect([...printed()].sort()).not.toEqual([...patternParts].sort());
    expect([...printed(), ...partsLeftOut(design())].sort()).toEqual([...patternParts].sort());
    expect(printed()).toEqual(patternParts.filter((part) => printed().includes(part)));
  });

  it('are left out, and come back to where they usually stand, also among parts that were moved', () => {
    printPart('materials', false);
    expect(partsLeftOut(design())).toContain('materials');
    movePart('cover', 99);
    printPart('materials', true);
    expect(printed().indexOf('materials')).toBe(printed().indexOf('cover') + 1);
  });

  it('go to their place, and no further than the ends', () => {
    const before = printed();
    movePart('chart', 0);
    expect(printed()).toEqual(['chart', ...before.filter((part) => part !== 'chart')]);
    movePart('chart', -1);
    expect(printed()[0]).toBe('chart');
    movePart('chart', 99);
    expect(printed().at(-1)).toBe('chart');
  });

  it('change by one step each, and what changes nothing is none', () => {
    movePart('cover', 0);
    usualParts();
    setCover(undefined);
    printPart('chart', true);
    expect(undoStep()).toBeNull();
    printPart('chart', false);
    movePart('cover', 1);
    usualParts();
    expect(pattern()?.parts).toBeUndefined();
    expect([undoStep()?.label, undoStep()?.label, undoStep()?.label]).toEqual([
      'Print the usual parts',
      'Move Cover',
      'Leave out Chart',
    ]);
    expect(pattern()).toBeUndefined();
  });

  it('that are all left out leave none', () => {
    for (const part of printed()) printPart(part, false);
    expect(printed()).toEqual([]);
    printPart('rows', true);
    expect(printed()).toEqual(['rows']);
  });
});

describe('what a pattern says and how it is printed', () => {
  it('is kept beside what was written before', () => {
    writeText('terms', 'For one maker.');
    writeText('welcome', '');
    changeCopy('Language', 'language', 'de');
    changeCopy('Cells', 'cells', 'large');
    expect(pattern()).toEqual({
      texts: { terms: 'For one maker.', welcome: '' },
      copy: { language: 'de', cells: 'large' },
    });
    writeText('terms', undefined);
    expect(pattern()?.texts).toEqual({ welcome: '' });
  });

  it('shows a photograph on the cover until it is taken off', () => {
    const cover = { mediaType: 'image/png' as const, widthPx: 3, heightPx: 4, picture: ['AAAA'] };
    setCover(cover);
    expect(pattern()?.cover).toEqual(cover);
    setCover(undefined);
    expect(pattern()).toEqual({});
  });
});
