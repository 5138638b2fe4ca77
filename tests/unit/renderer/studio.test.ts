import { beforeEach, describe, expect, it } from 'vitest';
import {
  beginStroke,
  change,
  changeAside,
  dropStroke,
  endStroke,
  redoStep,
  stroke,
  undoStep,
} from '../../../renderer/store/changing.ts';
import { isUnsaved, markSaved, openDesign, studio } from '../../../renderer/store/studio.ts';
import { flatten } from '../../../shared/chart/chart.ts';
import { cutOf } from '../../../shared/design/bundle-edits.ts';
import { newDesign } from '../../../shared/design/new-design.ts';

const home = { design: 'h1', fileName: 'Kite.larkrow', stamp: { size: 1, modifiedMs: 1, sha256: 'a' } };

/** A run of four numbers: row, column, count, code. */
function paint(...runs: number[]) {
  return { kind: 'paint', layer: 'picture', runs: Uint16Array.from(runs) } as const;
}

function open() {
  return studio.getState().open!;
}

function chartIsTrue(): void {
  expect(open().chart.cells).toEqual(flatten(open().design).cells);
}

beforeEach(() => openDesign(newDesign({ title: 'Kite', columns: 8, rows: 6 }), home));

describe('the open design', () => {
  it('draws on the topmost layer that is shown, with a yarn that is not the ground', () => {
    expect(open().layer).toBe('picture');
    expect(open().code).toBe(2);
  });

  it('keeps its chart true to the layers after every change, undo and redo', () => {
    change('Draw', paint(1, 2, 3, 5));
    chartIsTrue();
    undoStep();
    chartIsTrue();
    redoStep();
    chartIsTrue();
    expect(open().chart.cells[1 * 8 + 2]).toBe(5);
  });
});

describe('a stroke', () => {
  it('is one step, however many parts it had', () => {
    beginStroke('Draw');
    stroke(paint(0, 0, 1, 3));
    stroke(paint(1, 1, 1, 3));
    stroke(paint(2, 2, 1, 3));
    endStroke();
    chartIsTrue();
    expect(open().history.done).toHaveLength(1);
    undoStep();
    expect(open().chart.cells.every((code) => code === 1)).toBe(true);
  });

  it('that begins afresh leaves nothing of what it showed before', () => {
    beginStroke('Draw');
    stroke(paint(0, 0, 8, 4), true);
    stroke(paint(5, 0, 2, 4), true);
    chartIsTrue();
    endStroke();
    expect([...open().chart.cells].filter((code) => code === 4)).toHaveLength(2);
  });

  it('that is dropped leaves the design and the history as they were', () => {
    const before = open().design;
    beginStroke('Draw');
    stroke(paint(3, 0, 8, 4));
    dropStroke();
    chartIsTrue();
    expect(open().design).toBe(before);
    expect(open().history.done).toHaveLength(0);
  });

  it('that changed nothing leaves no step', () => {
    beginStroke('Draw');
    stroke(paint(3, 0, 2, 0));
    endStroke();
    expect(open().history.done).toHaveLength(0);
  });

  it('that is half drawn is what undo takes back first, and redo brings it back', () => {
    change('Draw', paint(0, 0, 1, 2));
    beginStroke('Half');
    stroke(paint(1, 0, 1, 2));
    expect(undoStep()?.label).toBe('Half');
    chartIsTrue();
    expect(open().history.done.map(({ label }) => label)).toEqual(['Draw']);
    redoStep();
    expect(open().chart.cells[8]).toBe(2);
  });

  it('is not lost when something else is done in the midst of it', () => {
    beginStroke('Half');
    stroke(paint(1, 0, 1, 2));
    change('Fill', paint(0, 0, 8, 4));
    expect(open().history.done.map(({ label }) => label)).toEqual(['Half', 'Fill']);
    chartIsTrue();
  });

  it('counts as not saved while it is drawn', () => {
    beginStroke('Half');
    expect(isUnsaved(open())).toBe(false);
    stroke(paint(1, 0, 1, 2));
    expect(isUnsaved(open())).toBe(true);
  });
});

describe('what is saved', () => {
  it('is told from what is not, also after undoing back to what is on disk', () => {
    expect(isUnsaved(open())).toBe(false);
    change('Draw', paint(0, 0, 1, 2));
    expect(isUnsaved(open())).toBe(true);
    undoStep();
    expect(isUnsaved(open())).toBe(false);
    redoStep();
    markSaved(home, open().history.done.at(-1)!, 0);
    expect(isUnsaved(open())).toBe(false);
    undoStep();
    expect(isUnsaved(open())).toBe(true);
  });

  it('does not include a tick, which is no step and outlives what is undone', () => {
    change('Draw', paint(0, 0, 1, 2));
    const tick = cutOf(open().design, { yarn: 'y1', cutMm: 800 }, 4);
    undoStep();
    changeAside(tick);
    expect(isUnsaved(open())).toBe(true);
    redoStep();
    undoStep();
    expect(undoStep()).toBeNull();
    expect(open().design.bundles?.cut).toEqual([{ yarn: 'y1', cutMm: 800, pieces: 4 }]);
    markSaved(home, null, open().aside);
    expect(isUnsaved(open())).toBe(false);
    changeAside(cutOf(open().design, { yarn: 'y1', cutMm: 800 }, 0));
    expect(isUnsaved(open())).toBe(true);
    expect(open().design.bundles).toBeUndefined();
  });

  it('does not include a design that was never saved', () => {
    openDesign(newDesign({ title: 'Kite', columns: 8, rows: 6 }), null);
    expect(isUnsaved(open())).toBe(true);
  });

  it('stays unsaved where a stroke came while the file was being written', () => {
    change('Draw', paint(0, 0, 1, 2));
    const step = open().history.done.at(-1)!;
    change('Draw', paint(1, 0, 1, 2));
    markSaved(home, step, 0);
    expect(isUnsaved(open())).toBe(true);
  });
});
