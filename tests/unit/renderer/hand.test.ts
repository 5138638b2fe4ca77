import { beforeEach, describe, expect, it } from 'vitest';
import { drawBorder, followBorder } from '../../../renderer/draw/hand/border-preview.ts';
import { hand, isPressed } from '../../../renderer/draw/hand/hand.ts';
import { dropLifted, moveLifted } from '../../../renderer/draw/hand/lifting.ts';
import { layerCommands } from '../../../renderer/draw/layers/layer-deeds.ts';
import { nudgePatch, patchCommands } from '../../../renderer/draw/patch/patch-deeds.tsx';
import { changeSymmetry } from '../../../renderer/draw/symmetry/symmetry-deeds.ts';
import { change, chooseLayer, endStroke, redoStep, undoStep } from '../../../renderer/store/changing.ts';
import type { Tool } from '../../../renderer/store/state.ts';
import { changeDrawing, chooseCode, isUnsaved, openDesign, studio } from '../../../renderer/store/studio.ts';
import type { Held } from '../../../renderer/surface/gestures.ts';
import type { Motif } from '../../../shared/chart/patch/motif.ts';
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import { BARE } from '../../../shared/design/codes.ts';
import { designFromLetters, lettersOf, lettersOfChart } from '../../notation.ts';

const cell = (row: number, column: number): Cell => ({ row, column });

function open() {
  return studio.getState().open!;
}

function drawn(): string[] {
  return lettersOfChart(open().chart);
}

/** Presses the tool on a cell, moves it over the others and lets go. */
function draw(tool: Tool, first: Cell, ...others: Cell[]): void {
  studio.setState({ tool });
  hand.press(first);
  for (const each of others) hand.move([each]);
  hand.release();
}

beforeEach(() => {
  hand.drop();
  openDesign(designFromLetters(['aaaaa', 'abbba', 'abaaa', 'aaaaa']), null);
  chooseCode(3);
});

describe('the hand', () => {
  it('knots all along its way, however far the pointer jumped, as one step', () => {
    draw('knot', cell(0, 0), cell(0, 4), cell(3, 4));
    expect(drawn()).toEqual(['ccccc', 'abbbc', 'abaac', 'aaaac']);
    expect(open().history.done.map(({ label }) => label)).toEqual(['Knot']);
    undoStep();
    expect(drawn()).toEqual(['aaaaa', 'abbba', 'abaaa', 'aaaaa']);
  });

  it('keeps of a line only where it ends, whatever it was moved over', () => {
    draw('line', cell(0, 0), cell(3, 0), cell(3, 3));
    expect(drawn()).toEqual(['caaaa', 'acbba', 'abcaa', 'aaaca']);
  });

  it('draws a rectangle from any corner, and beyond the edge', () => {
    draw('rectangle', cell(2, 3), cell(9, 9));
    expect(drawn()).toEqual(['aaaaa', 'abbba', 'abacc', 'aaacc']);
  });

  it('fills what touches where it is let go', () => {
    draw('fill', cell(0, 0), cell(1, 1));
    expect(drawn()).toEqual(['aaaaa', 'accca', 'acaaa', 'aaaaa']);
    expect(open().history.done).toHaveLength(1);
  });

  it('unpicks to the cord, and matches the yarn or the bare cord of a cell', () => {
    draw('unpick', cell(0, 0), cell(0, 1));
    expect(drawn()[0]).toBe('--aaa');
    draw('match', cell(1, 2));
    expect(open().code).toBe(2);
    draw('match', cell(0, 1));
    expect(open().code).toBe(BARE);
    draw('match', cell(0, 9));
    expect(open().code).toBe(BARE);
  });

  it('leaves nothing behind when a stroke is dropped, not even a step', () => {
    studio.setState({ tool: 'knot' });
    hand.press(cell(0, 0));
    hand.move([cell(3, 3)]);
    hand.drop();
    hand.move([cell(3, 0)]);
    hand.release();
    expect(drawn()).toEqual(['aaaaa', 'abbba', 'abaaa', 'aaaaa']);
    expect(open().history.done).toEqual([]);
    expect(isPressed()).toBe(false);
  });

  it('does not fill when the press is dropped, as two fingers do', () => {
    studio.setState({ tool: 'fill' });
    hand.press(cell(0, 0));
    hand.drop();
    expect(drawn()[0]).toBe('aaaaa');
  });

  it('says which cell it is over, and none outside the chart', () => {
    hand.hover(cell(2, 1));
    expect(studio.getState().under).toEqual(cell(2, 1));
    hand.hover(cell(4, 1));
    expect(studio.getState().under).toBeNull();
  });
});

/** Presses with keys held. */
const held = (keys: Partial<Held>): Held => ({ shift: false, alt: false, copy: false, ...keys });

describe('every tool under a symmetry', () => {
  beforeEach(() => {
    openDesign(designFromLetters(['aaaaaa', 'aaaaaa', 'aaaaaa', 'aaaaaa']), null);
    chooseCode(3);
    changeSymmetry({ point: 'mirror-both' });
  });

  it('draws its images too, as one step', () => {
    draw('knot', cell(0, 0), cell(0, 1));
    expect(drawn()).toEqual(['ccaacc', 'aaaaaa', 'aaaaaa', 'ccaacc']);
    expect(open().history.done).toHaveLength(1);
    undoStep();
    expect(drawn()[0]).toBe('aaaaaa');
  });

  it('is shown before it is drawn: the ghost has all images', () => {
    studio.setState({ tool: 'knot' });
    hand.hover(cell(1, 1));
    expect(studio.getState().ghost).toHaveLength(4 * 4);
  });

  it('fills in all of its quarters', () => {
    draw('line', cell(0, 2), cell(1, 2));
    draw('line', cell(1, 0), cell(1, 2));
    chooseCode(4);
    draw('fill', cell(0, 0));
    expect(drawn()).toEqual(['ddccdd', 'cccccc', 'cccccc', 'ddccdd']);
  });
});

describe('a nib', () => {
  it('draws as wide as it is', () => {
    changeDrawing({ width: 2, nib: 'square' });
    draw('knot', cell(1, 1));
    expect(drawn()).toEqual(['aaaaa', 'accba', 'accaa', 'aaaaa']);
    changeDrawing({ width: 1, nib: 'round' });
  });

  it('draws straight from where it was pressed with Shift', () => {
    studio.setState({ tool: 'knot' });
    hand.press(cell(0, 0), held({ shift: true }));
    hand.move([cell(1, 4)], held({ shift: true }));
    hand.release();
    expect(drawn()[0]).toBe('ccccc');
    expect(drawn()[1]).toBe('abbba');
  });
});

describe('a layer that is locked or hidden', () => {
  it('is not drawn on, and nothing is begun', () => {
    for (const field of ['locked', 'visible'] as const) {
      openDesign(designFromLetters(['aaa']), null);
      const value = field === 'locked';
      change('Layer', { kind: 'set-layer', layer: 'picture', field, value });
      draw('knot', cell(0, 0));
      draw('fill', cell(0, 0));
      expect(lettersOf(open().design)).toEqual(['aaa']);
      expect(open().history.done).toHaveLength(1);
    }
  });
});

describe('a patch', () => {
  beforeEach(() => {
    openDesign(
      designFromLetters([
        ['aaaaaa', 'aaaaaa', 'aaaaaa'],
        ['b.....', '.c....', '......'],
      ]),
      null,
    );
    studio.setState({ tool: 'patch' });
  });

  it('is chosen by its corners, added to with Shift, taken from with Alt', () => {
    draw('patch', cell(0, 0), cell(1, 1));
    expect(chosenCells()).toEqual(['##....', '##....', '......']);
    hand.press(cell(2, 5), held({ shift: true }));
    hand.release();
    expect(chosenCells()).toEqual(['##....', '##....', '.....#']);
    hand.press(cell(0, 0), held({ alt: true }));
    hand.move([cell(0, 1)], held({ alt: true }));
    hand.release();
    expect(chosenCells()).toEqual(['......', '##....', '.....#']);
  });

  it('moves what its layer has, over the other layers, and leaves what it passed over', () => {
    draw('patch', cell(0, 0), cell(1, 1));
    draw('patch', cell(0, 0), cell(0, 2), cell(1, 4));
    expect(lettersOf(open().design, 1)).toEqual(['......', '....b.', '.....c']);
    expect(chosenCells()).toEqual(['......', '....##', '....##']);
    nudgePatch(-1, 0);
    expect(lettersOf(open().design, 1)).toEqual(['....b.', '.....c', '......']);
    change('Something else', { kind: 'set', field: 'title', value: 'x' });
    expect(open().history.done.map(({ label }) => label)).toEqual(['Move a patch', 'Something else']);
    undoStep();
    undoStep();
    expect(lettersOf(open().design, 1)).toEqual(['b.....', '.c....', '......']);
  });

  it('is copied with the copying key, and flips and turns where it lies', () => {
    draw('patch', cell(0, 0), cell(1, 1));
    hand.press(cell(0, 0), held({ copy: true }));
    hand.move([cell(0, 3)], held({ copy: true }));
    hand.release();
    expect(lettersOf(open().design, 1)).toEqual(['b..b..', '.c..c.', '......']);
    patchCommands['flip-left-right']();
    expect(lettersOf(open().design, 1)).toEqual(['b...b.', '.c.c..', '......']);
    patchCommands['turn-right']();
    expect(lettersOf(open().design, 1)).toEqual(['b..c..', '.c..b.', '......']);
  });

  it('is cut and pasted at the same place, through another layer too', () => {
    draw('patch', cell(0, 0), cell(1, 1));
    patchCommands.cut();
    expect(lettersOf(open().design, 1)).toEqual(['......', '......', '......']);
    chooseLayer('sheet-1');
    patchCommands.paste();
    endStroke();
    expect(lettersOf(open().design, 0)).toEqual(['baaaaa', 'acaaaa', 'aaaaaa']);
  });

  it('is dropped as if it had never been lifted', () => {
    draw('patch', cell(0, 0), cell(1, 1));
    draw('patch', cell(0, 0), cell(1, 3));
    dropLifted();
    expect(lettersOf(open().design, 1)).toEqual(['b.....', '.c....', '......']);
    expect(open().history.done).toEqual([]);
  });

  it('has its outline where its cells are after undoing and redoing a move', () => {
    draw('patch', cell(0, 0), cell(1, 1));
    nudgePatch(1, 2);
    undoStep();
    expect(chosenCells()).toEqual(['##....', '##....', '......']);
    redoStep();
    expect(chosenCells()).toEqual(['......', '..##..', '..##..']);
    expect(lettersOf(open().design, 1)).toEqual(['......', '..b...', '...c..']);
  });

  it('goes back only by the last drag when a second finger takes that back', () => {
    draw('patch', cell(0, 0), cell(1, 1));
    nudgePatch(1, 2);
    hand.press(cell(1, 2));
    hand.move([cell(1, 4)]);
    hand.drop();
    expect(lettersOf(open().design, 1)).toEqual(['......', '..b...', '...c..']);
    expect(chosenCells()).toEqual(['......', '..##..', '..##..']);
  });

  it('is still chosen where the press that would have chosen others is taken back', () => {
    draw('patch', cell(0, 0), cell(1, 1));
    hand.press(cell(2, 5));
    hand.drop();
    expect(chosenCells()).toEqual(['##....', '##....', '......']);
  });

  it('stays on its layer when another is chosen, and is let go of', () => {
    draw('patch', cell(0, 0), cell(1, 1));
    nudgePatch(0, 1);
    chooseLayer('sheet-1');
    expect(studio.getState().patch).toBeNull();
    expect(lettersOf(open().design, 1)[0]).toBe('.b....');
  });

  it('pasted into a design that lacks its yarns brings them along, and takes them away when it is dropped', () => {
    const heather = { ...open().design.yarns[1]!, name: 'Heather', color: '#7a5c8f' };
    change('Yarn', {
      kind: 'set',
      field: 'yarns',
      value: [open().design.yarns[0]!, heather, open().design.yarns[2]!],
    });
    draw('patch', cell(0, 0), cell(1, 1));
    patchCommands.copy();
    openDesign(designFromLetters(['aaaa', 'aaaa']), null);
    const before = open().design.yarns.length;
    patchCommands.paste();
    expect(open().design.yarns.at(-1)?.name).toBe('Heather');
    dropLifted();
    expect(open().design.yarns).toHaveLength(before);
    patchCommands.paste();
    endStroke();
    expect(open().history.done.map(({ label }) => label)).toEqual(['Paste']);
    undoStep();
    expect(open().design.yarns).toHaveLength(before);
  });

  it('fills, unpicks and gathers what is seen', () => {
    draw('patch', cell(0, 0), cell(0, 1));
    chooseCode(4);
    patchCommands['fill-patch']();
    expect(lettersOf(open().design, 1)[0]).toBe('dd....');
    patchCommands['unpick-patch']();
    expect(lettersOf(open().design, 1)[0]).toBe('......');
    patchCommands['gather-patch']();
    expect(lettersOf(open().design, 1)[0]).toBe('aa....');
  });
});

describe('a stroke in the midst of which something else is done', () => {
  it('is kept as far as it was drawn, and goes on as another', () => {
    studio.setState({ tool: 'knot' });
    hand.press(cell(0, 0));
    hand.move([cell(0, 1)]);
    endStroke();
    hand.move([cell(0, 3)]);
    hand.release();
    expect(drawn()[0]).toBe('cccca');
    expect(open().history.done.map(({ label }) => label)).toEqual(['Knot', 'Knot']);
  });
});

describe('the cells of a layer', () => {
  it('come back from beyond the edge when they are moved back', () => {
    layerCommands['content-right-ten']();
    expect(lettersOf(open().design)).toEqual(['.....', '.....', '.....', '.....']);
    layerCommands['content-left-ten']();
    layerCommands['content-down']();
    layerCommands['content-up']();
    expect(lettersOf(open().design)).toEqual(['aaaaa', 'abbba', 'abaaa', 'aaaaa']);
    endStroke();
    expect(open().history.done).toEqual([]);
  });
});

describe('what is set down ready-made', () => {
  const wide = [
    '...............',
    '...............',
    '...............',
    '...............',
    '...............',
    '...............',
    '...............',
    '...............',
    '...............',
    '...............',
    '...............',
    '...............',
    '...............',
  ];

  it('is text in the chosen yarn, and can be moved until something else is done', () => {
    openDesign(designFromLetters(wide), null);
    chooseCode(2);
    changeDrawing({ text: 'I', alphabet: 'small' });
    draw('text', cell(6, 5));
    const knots = () => drawn().join('').replaceAll('-', '');
    expect(knots()).toMatch(/^b+$/);
    const before = knots().length;
    moveLifted(0, 3);
    expect(knots()).toHaveLength(before);
    endStroke();
    expect(open().history.done.map(({ label }) => label)).toEqual(['Text']);
  });

  it('is a motif in the yarns of the design, with those that it lacks added', () => {
    openDesign(designFromLetters(wide), null);
    const yarns = [{ ...open().design.yarns[1]!, name: 'Heather', color: '#7a5c8f' }];
    const motifs: Motif[] = [{ id: 'm', name: 'Two', columns: 2, yarns, rows: ['2y2'] }];
    studio.setState({ motifs });
    changeDrawing({ motif: 'm' });
    draw('motif', cell(1, 1));
    endStroke();
    expect(open().design.yarns.at(-1)?.name).toBe('Heather');
    expect(drawn()[1]).toBe('-gg------------');
  });

  it('is a border of a kept motif with its own yarns, too', () => {
    openDesign(designFromLetters(['aaa', 'aaa', 'aaa']), null);
    const yarns = [{ ...open().design.yarns[1]!, name: 'Heather', color: '#7a5c8f' }];
    studio.setState({ motifs: [{ id: 'm', name: 'One', columns: 1, yarns, rows: ['1y2'] }], tool: 'border' });
    const { border } = studio.getState().drawing;
    changeDrawing({ border: { ...border, motif: 'm' } });
    const stop = followBorder();
    expect(drawn()).toEqual(['ggg', 'gag', 'ggg']);
    drawBorder();
    stop();
    changeDrawing({ border });
    expect(open().design.yarns.at(-1)?.name).toBe('Heather');
    undoStep();
    expect(open().design.yarns.some(({ name }) => name === 'Heather')).toBe(false);
  });

  it('is a border that nothing but drawing it ties', () => {
    openDesign(
      designFromLetters([
        ['aaaa', 'aaaa', 'aaaa'],
        ['b...', '....', '....'],
      ]),
      null,
    );
    draw('patch', cell(0, 0));
    studio.setState({ tool: 'border' });
    const stop = followBorder();
    expect(drawn()[0]).toBe('bbbb');
    // A design that was never saved counts as unsaved; what is only shown adds nothing to it.
    studio.setState({ open: { ...open(), savedAt: null } });
    expect(isUnsaved(open())).toBe(false);
    change('Title', { kind: 'set', field: 'title', value: 'x' });
    expect(drawn()).toEqual(['baaa', 'aaaa', 'aaaa']);
    expect(open().history.done.map(({ label }) => label)).toEqual(['Title']);
    stop();
  });

  it('is a border that is only shown until it is drawn', () => {
    openDesign(
      designFromLetters([
        ['aaaaaa', 'aaaaaa', 'aaaaaa', 'aaaaaa'],
        ['b.....', '......', '......', '......'],
      ]),
      null,
    );
    draw('patch', cell(0, 0));
    studio.setState({ tool: 'border' });
    const stop = followBorder();
    expect(drawn()).toEqual(['bbbbbb', 'baaaab', 'baaaab', 'bbbbbb']);
    stop();
    expect(drawn()).toEqual(['baaaaa', 'aaaaaa', 'aaaaaa', 'aaaaaa']);
    const again = followBorder();
    drawBorder();
    again();
    expect(drawn()).toEqual(['bbbbbb', 'baaaab', 'baaaab', 'bbbbbb']);
    expect(open().history.done.map(({ label }) => label)).toEqual(['Border']);
  });
});

function chosenCells(): string[] {
  const { mask } = studio.getState().patch!;
  return Array.from({ length: mask.rows }, (_, r) =>
    Array.from(mask.chosen.subarray(r * mask.columns, (r + 1) * mask.columns), (is) => '.#'[is]).join(''),
  );
}
