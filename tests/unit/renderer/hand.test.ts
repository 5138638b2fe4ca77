import { beforeEach, describe, expect, it } from 'vitest';
import { hand, isPressed } from '../../../renderer/draw/hand.ts';
import { undoStep } from '../../../renderer/store/changing.ts';
import type { Tool } from '../../../renderer/store/state.ts';
import { chooseCode, openDesign, studio } from '../../../renderer/store/studio.ts';
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import { BARE } from '../../../shared/design/codes.ts';
import { designFromLetters, lettersOfChart } from '../../notation.ts';

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
