import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { defaults } from '../../../shared/design/defaults.ts';
import { limits } from '../../../shared/design/limits.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { swatchDesign } from '../../../shared/gauge/swatch-design.ts';
import { swatchInstructions } from '../../../shared/gauge/swatch-instructions.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { designFromLetters, lettersOfChart } from '../../notation.ts';

const hanging = designFromLetters(['aabcc', 'abccc'], { title: 'Heron', startCorner: 'top-right' });

describe('a swatch to tie', () => {
  it('is about 10 cm each way, in ground and the other yarn that is used most', () => {
    const swatch = swatchDesign(hanging);
    expect([swatch.title, swatch.columns, swatch.rows]).toEqual(['Swatch for Heron', 20, 20]);
    expect(swatch.startCorner).toBe('top-right');
    expect(swatch.yarns.map(({ id }) => id)).toEqual(['y1', 'y3']);
    const letters = lettersOfChart(flatten(swatch));
    expect(letters.slice(0, 10)).toEqual(Array(10).fill('a'.repeat(20)));
    expect(letters.slice(10, 18)).toEqual(Array(8).fill(`aaaaa${'c'.repeat(10)}aaaaa`));
    expect(letters.slice(18)).toEqual(Array(2).fill('a'.repeat(20)));
  });

  it('is a design that can be saved and planned, with cord and settings of the hanging', () => {
    const swatch = swatchDesign({ ...hanging, title: 'x'.repeat(limits.nameChars) });
    expect(() => writeDesign(swatch)).not.toThrow();
    expect(planStrands(swatch, flatten(swatch), { effort: 'quick' }).ok).toBe(true);
    expect(swatch.cord).toBe(hanging.cord);
  });

  it('has fewer cords where they are thick and more where they are thin, within reason, and an even number', () => {
    const cordsFor = (diameterMm: number) =>
      swatchDesign({ ...hanging, cord: { ...hanging.cord, diameterMm } }).columns;
    expect([cordsFor(0.5), cordsFor(1.5), cordsFor(6), cordsFor(30)]).toEqual([40, 28, 12, 12]);
  });

  it('is all ground where the hanging has no other yarn', () => {
    const swatch = swatchDesign(designFromLetters(['aa'], { yarns: [defaults.yarns[0]!] }));
    expect(new Set(flatten(swatch).cells)).toEqual(new Set([1]));
  });
});

describe('what to measure on it', () => {
  const swatch = swatchDesign(hanging);

  it('fills in each field of a swatch once, and tells what is about to be found', () => {
    const instructions = swatchInstructions(swatch, 'metric');
    expect(instructions.flatMap(({ fields }) => fields).toSorted()).toEqual([
      'cordAfterMm',
      'cordBeforeMm',
      'cords',
      'heightMm',
      'knots',
      'rows',
      'widthMm',
      'yarnMm',
    ]);
    const all = instructions.map(({ sentence }) => sentence).join(' ');
    // A knot takes 36.75 mm: (1520 - 130) / 36.75 = 37.8.
    for (const words of ['exactly 152 cm', 'about 37', 'all 20 cords', 'about 10 cm', 'about 9.6 cm']) {
      expect(all).toContain(words);
    }
    expect(all).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('speaks in inches to those who measure in them', () => {
    const [first, second] = swatchInstructions(swatch, 'us');
    // Eight tenths of 3.78 in, and a piece of 60 in with tails of 65 mm, 2.56 in: whole inches, so that no fraction is lost.
    expect(first!.sentence).toContain('and 3 in below');
    expect(second!.sentence).toContain('exactly 60 in long');
    expect(second!.sentence).toContain('a tail of 2 3/4 in');
  });

  it('asks for no longer a piece than the rows of ground take', () => {
    const long = { ...swatch, tying: { ...swatch.tying, workingLengthMm: 50_000 } };
    const { sentence } = swatchInstructions(long, 'metric').find(({ fields }) => fields.includes('knots'))!;
    // 200 knots of 36.75 mm and two tails are 7.48 m.
    expect(sentence).toContain('exactly 748 cm');
    expect(sentence).toContain('about 199');
  });
});
