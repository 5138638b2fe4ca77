import { describe, expect, it } from 'vitest';
import { type Chart, flatten } from '../../../../shared/chart/chart.ts';
import { tidied } from '../../../../shared/chart/cost/tidied.ts';
import { tidyCells } from '../../../../shared/chart/cost/tidy-cells.ts';
import { defaults } from '../../../../shared/design/defaults.ts';
import type { Design, Layer } from '../../../../shared/design/design.ts';
import { apply, inverse } from '../../../../shared/design/edits.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { designFromLetters, lettersOf, lettersOfChart } from '../../../notation.ts';

function tidy(rows: string[], colours: string[] = []): string[] {
  const design = designFromLetters(rows);
  const yarns = design.yarns.map((yarn, i) => ({ ...yarn, color: colours[i] ?? yarn.color }));
  return lettersOfChart(tidied(flatten(design), yarns).chart);
}

function strands(design: Design, chart: Chart): number {
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value.totals.strands;
}

describe('a lone knot that is tidied', () => {
  it('takes the yarn that most of those beside, above and below it have', () => {
    expect(tidy(['aab', 'acb', 'bab', 'bbb'])).toEqual(['aab', 'aab', 'bab', 'bbb']);
  });

  it('takes the one that most cells around it have, where as many touch it', () => {
    expect(tidy(['aab', 'acb', 'bbb'])).toEqual(['aab', 'abb', 'bbb']);
    expect(tidy(['aaa', 'acb', 'abb'])).toEqual(['aaa', 'aab', 'abb']);
  });

  it('takes the nearest in colour, where that is even too', () => {
    const rows = ['aab', 'acb', 'abb'];
    expect(tidy(rows, ['#202020', '#d0d0d0', '#c0c0c0'])).toEqual(['aab', 'abb', 'abb']);
    expect(tidy(rows, ['#202020', '#d0d0d0', '#303030'])).toEqual(['aab', 'aab', 'abb']);
  });

  it('takes the yarn of the lowest code, where nothing else decides', () => {
    const colours = ['#404040', '#404040', '#c0c0c0'];
    expect(tidy(['aab', 'acb', 'abb'], colours)).toEqual(['aab', 'aab', 'abb']);
    expect(tidy(['bba', 'bca', 'baa'], colours)).toEqual(['bba', 'baa', 'baa']);
  });

  it('becomes bare only where all that touches it is bare, corners aside', () => {
    expect(tidy(['b-b', '-a-', 'b-b'])).toEqual(['---', '---', '---']);
    expect(tidy(['---', '-a-', '-b-', '-b-'])).toEqual(['---', '-b-', '-b-', '-b-']);
  });

  it('leaves bare cells bare', () => {
    expect(tidy(['aaa', 'a-a', 'aaa'])).toEqual(['aaa', 'a-a', 'aaa']);
  });

  it('is lone no more once another has taken its yarn', () => {
    expect(tidy(['ab', 'ba'])).toEqual(['bb', 'bb']);
  });

  it('stays where it is all there is', () => {
    const { chart, changed, left } = tidied(
      flatten(designFromLetters(['a'])),
      designFromLetters(['a']).yarns,
    );
    expect([lettersOfChart(chart), changed, left]).toEqual([['a'], 0, 1]);
  });
});

describe('a tidied chart', () => {
  it('tells which cells changed, as strips of one yarn', () => {
    const design = designFromLetters(['aaaaa', 'abcaa', 'aaaab', 'aaaab']);
    const { strips, changed, left } = tidied(flatten(design), design.yarns);
    expect([Array.from(strips), changed, left]).toEqual([[1, 1, 2, 1], 2, 0]);
  });

  it('leaves cells that may not change, and what they need', () => {
    const design = designFromLetters(['aaaa', 'abca', 'aaaa']);
    const { chart, left } = tidied(flatten(design), design.yarns, { mayChange: (cell) => cell !== 5 });
    expect([lettersOfChart(chart), left]).toEqual([['aaaa', 'abaa', 'aaaa'], 1]);
  });

  it('may need a strand more, where one was carried by way of a lone knot', () => {
    const far = 'a'.repeat(defaults.tying.carryMaxCords - 1);
    const design = designFromLetters([`bb${far}b${far}bb`]);
    const chart = flatten(design);
    const { chart: after } = tidied(chart, design.yarns);
    expect(lettersOfChart(after)).toEqual([`bb${far}a${far}bb`]);
    expect([strands(design, chart), strands(design, after)]).toEqual([2, 3]);
  });
});

describe('a design that is tidied', () => {
  const speck = [
    ['aaa', 'aaa', 'aaa'],
    ['...', '.b.', '...'],
    ['...', '...', '...'],
  ];

  function locked(design: Design, ...at: number[]): Design {
    const layers = design.layers.map((layer, i): Layer => ({ ...layer, locked: at.includes(i) }));
    return { ...design, layers };
  }

  function tidyDesign(design: Design) {
    const { edit, changed, left } = tidyCells(design, flatten(design));
    const after = edit ? apply(design, edit) : design;
    return { after, edit, changed, left };
  }

  it('is painted on the layer that shows the knot, and can be taken back', () => {
    const design = designFromLetters(speck);
    const { after, edit, changed, left } = tidyDesign(design);
    expect([changed, left]).toEqual([1, 0]);
    expect(lettersOf(after, 1)).toEqual(['...', '.a.', '...']);
    expect([lettersOf(after, 0), lettersOf(after, 2)]).toEqual([speck[0], speck[2]]);
    expect(apply(after, inverse(design, edit!))).toEqual(design);
  });

  it('is painted on the top unlocked layer above, where the one that shows the knot is locked', () => {
    const { after, left } = tidyDesign(locked(designFromLetters(speck), 1));
    expect(left).toBe(0);
    expect(lettersOf(after, 1)).toEqual(speck[1]);
    expect(lettersOf(after, 2)).toEqual(['...', '.a.', '...']);
    expect(lettersOfChart(flatten(after))).toEqual(['aaa', 'aaa', 'aaa']);
  });

  it('keeps the knot where all layers down to it are locked, hidden, or both', () => {
    const design = locked(designFromLetters(speck), 1, 2);
    expect(tidyDesign(design)).toMatchObject({ edit: null, changed: 0, left: 1 });
    const open = locked(designFromLetters(speck), 1);
    const layers = open.layers.map((layer, i) => ({ ...layer, visible: i !== 2 }));
    expect(tidyDesign({ ...open, layers })).toMatchObject({ edit: null, changed: 0, left: 1 });
  });

  it('does not count on a knot that must stay: what touches it is tidied for itself', () => {
    // b and c are lone side by side. Were b changed to c first, c would no longer be lone; but b is locked.
    const design = locked(designFromLetters([['-bc-'], ['....']]), 0, 1);
    expect(tidyDesign(design)).toMatchObject({ changed: 0, left: 2 });
    const half = designFromLetters([['-b--'], ['..c.']]);
    const { after, changed, left } = tidyDesign({
      ...half,
      layers: [
        { ...half.layers[0]!, locked: true },
        { ...half.layers[1]!, locked: false },
      ],
    });
    expect([changed, left, lettersOfChart(flatten(after))]).toEqual([1, 0, ['-cc-']]);
  });

  it('is one edit on several layers', () => {
    const design = designFromLetters([
      ['aaaaa', 'abaaa', 'aaaaa'],
      ['.....', '...c.', '.....'],
    ]);
    const { after, edit, changed } = tidyDesign(design);
    expect(changed).toBe(2);
    expect(edit?.kind).toBe('together');
    expect([lettersOf(after, 0)[1], lettersOf(after, 1)[1]]).toEqual(['aaaaa', '...a.']);
  });

  it('makes no edit where nothing is lone', () => {
    expect(tidyDesign(designFromLetters(['aabb']))).toMatchObject({ edit: null, changed: 0, left: 0 });
  });
});
