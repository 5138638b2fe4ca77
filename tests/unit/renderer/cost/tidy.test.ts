import { beforeEach, describe, expect, it } from 'vitest';
import { dropTidied, keepTidied, startTidying, tidyingNow } from '../../../../renderer/draw/cost/tidy.ts';
import { whyNotTidy } from '../../../../renderer/draw/cost/why-not-tidy.ts';
import { hand } from '../../../../renderer/draw/hand/hand.ts';
import { change, chooseLayer, endStroke, redoStep, undoStep } from '../../../../renderer/store/changing.ts';
import { chooseCode, isUnsaved, openDesign, studio } from '../../../../renderer/store/studio.ts';
import { designFromLetters, lettersOf, lettersOfChart } from '../../../notation.ts';

const open = () => studio.getState().open!;
const drawn = () => lettersOfChart(open().chart);
const steps = () => open().history.done.map(({ label }) => label);

// A lone knot on each of two layers.
const sheets = [
  ['aaaaaa', 'abaaaa', 'aaaaaa'],
  ['......', '....c.', '......'],
];
const tidy = ['aaaaaa', 'aaaaaa', 'aaaaaa'];
const asDrawn = ['aaaaaa', 'abaaca', 'aaaaaa'];

beforeEach(() => {
  endStroke();
  openDesign(designFromLetters(sheets), null);
});

describe('tidying', () => {
  it('is seen at once, and dropped without a trace, not even to be redone', () => {
    const before = open().design;
    startTidying();
    expect(drawn()).toEqual(tidy);
    expect(tidyingNow()).toMatchObject({ changed: 2, left: 0 });
    expect(isUnsaved(open())).toBe(true);
    dropTidied();
    expect(open().design).toBe(before);
    expect(drawn()).toEqual(asDrawn);
    expect(steps()).toEqual([]);
    expect(redoStep()).toBeNull();
    expect(tidyingNow()).toBeNull();
  });

  it('is kept as one step over all layers, which undo takes back', () => {
    startTidying();
    keepTidied();
    expect(steps()).toEqual(['Tidy']);
    expect(lettersOf(open().design, 0)).toEqual(tidy);
    undoStep();
    expect(lettersOf(open().design, 0)).toEqual(sheets[0]);
    expect(lettersOf(open().design, 1)).toEqual(sheets[1]);
    redoStep();
    expect(drawn()).toEqual(tidy);
  });

  it.each([
    ['another edit', () => change('Name it', { kind: 'set', field: 'title', value: 'Other' })],
    ['another layer', () => chooseLayer('sheet-1')],
    [
      'a stroke',
      () => {
        chooseCode(1);
        studio.setState({ tool: 'knot' });
        hand.press({ row: 0, column: 0 });
        hand.release();
      },
    ],
  ])('is dropped by whatever else is done, such as %s', (_, next) => {
    startTidying();
    next();
    expect(steps()).not.toContain('Tidy');
    expect(tidyingNow()).toBeNull();
    dropTidied();
    expect(drawn()).not.toEqual(tidy);
  });

  it('is taken back by undo while it is looked at, and nothing else is', () => {
    change('Before', { kind: 'set', field: 'title', value: 'Other' });
    startTidying();
    expect(undoStep()).toBeNull();
    expect(drawn()).toEqual(asDrawn);
    expect(steps()).toEqual(['Before']);
  });

  it('can be started again, and holds only the new one', () => {
    startTidying();
    dropTidied();
    startTidying();
    expect(tidyingNow()?.changed).toBe(2);
    keepTidied();
    startTidying();
    expect(tidyingNow()).toBeNull();
    expect(steps()).toEqual(['Tidy']);
  });

  it('says of a chart of one knot that it has nothing to tidy, and speaks of no locked layer', () => {
    openDesign(designFromLetters(['b']), null);
    startTidying();
    expect(tidyingNow()).toBeNull();
    const { sentence, isProblem } = whyNotTidy(open().chart, 1);
    expect(sentence).toContain('Nothing to tidy');
    expect(isProblem).toBe(false);
  });

  it('tells which cells change', () => {
    startTidying();
    expect([...tidyingNow()!.cells.keys()].filter((cell) => tidyingNow()!.cells[cell])).toEqual([7, 10]);
  });

  it('leaves lone knots of locked layers, and says how many', () => {
    const design = designFromLetters(sheets);
    const layers = design.layers.map((layer) => ({ ...layer, locked: layer.id === 'picture' }));
    openDesign({ ...design, layers }, null);
    startTidying();
    expect(drawn()).toEqual(['aaaaaa', 'aaaaca', 'aaaaaa']);
    expect(tidyingNow()).toMatchObject({ changed: 1, left: 1 });
    dropTidied();
  });
});
