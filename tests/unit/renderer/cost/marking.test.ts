import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { cellsToMark, keepMarking, toggleMarks, togglePair } from '../../../../renderer/draw/cost/marking.ts';
import { dropTidied, startTidying } from '../../../../renderer/draw/cost/tidy.ts';
import { findings, noFindings } from '../../../../renderer/planning/findings.ts';
import { change } from '../../../../renderer/store/changing.ts';
import { changeViews, openDesign, studio } from '../../../../renderer/store/studio.ts';
import { loneKnots } from '../../../../shared/chart/cost/lone-knots.ts';
import { shortRuns } from '../../../../shared/chart/cost/short-runs.ts';
import { alikePairs } from '../../../../shared/yarn/alike-pairs.ts';
import { designFromLetters } from '../../../notation.ts';

const open = () => studio.getState().open!;

/** What is marked, in rows of x and dots. */
function marked(): string[] | null {
  const { marked: cells } = studio.getState();
  const { columns, rows } = open().chart;
  if (!cells) return null;
  return Array.from({ length: rows }, (_, r) =>
    Array.from(cells.subarray(r * columns, (r + 1) * columns), (cell) => (cell === 1 ? 'x' : '.')).join(''),
  );
}

/** As the planner does, where all yarns are of one colour. */
function look(): void {
  const { chart, design } = open();
  const yarns = design.yarns.map((yarn) => ({ ...yarn, color: '#808080' }));
  findings.setState({
    columns: chart.columns,
    rows: chart.rows,
    cells: { 'lone-knots': loneKnots(chart), 'short-runs': shortRuns(chart), 'loose-ends': null },
    pairs: alikePairs(chart, yarns),
  });
}

let stop: () => void;

beforeEach(() => {
  openDesign(designFromLetters(['aaaa', 'abaa', 'aacc', 'aaaa']), null);
  findings.setState(noFindings);
  changeViews({ marks: null });
  stop = keepMarking();
});
afterEach(() => stop());

describe('marks on the chart', () => {
  it('show what causes a part of the cost, and go away again', () => {
    look();
    toggleMarks('lone-knots');
    expect(marked()).toEqual(['....', '.x..', '....', '....']);
    toggleMarks('short-runs');
    expect(marked()).toEqual(['....', 'xx..', '....', '....']);
    toggleMarks('short-runs');
    expect(marked()).toBeNull();
  });

  it('come when they are found, and follow the picture', () => {
    toggleMarks('lone-knots');
    expect(marked()).toBeNull();
    look();
    expect(marked()?.[1]).toBe('.x..');
    change('Knot', { kind: 'paint', layer: 'picture', runs: Uint16Array.of(0, 1, 1, 2) });
    look();
    // Two knots above one another are not alone; with nothing to be marked, nothing is veiled.
    expect(marked()).toBeNull();
  });

  it('show where two yarns touch, one pair at a time, and no cost beside it', () => {
    look();
    toggleMarks('lone-knots');
    togglePair({ a: 1, b: 3 });
    expect(studio.getState().views.marks).toBeNull();
    expect(marked()).toEqual(['....', '..xx', '.xxx', '..xx']);
    togglePair({ a: 1, b: 2 });
    expect(marked()).toEqual(['.x..', 'xxx.', '.x..', '....']);
    togglePair({ a: 1, b: 2 });
    expect(marked()).toBeNull();
    togglePair({ a: 1, b: 2 });
    changeViews({ marks: 'lone-knots' });
    expect(marked()).toEqual(['....', '.x..', '....', '....']);
  });

  it('of a pair go away for good where the two touch no longer', () => {
    look();
    togglePair({ a: 1, b: 2 });
    change('Knot', { kind: 'paint', layer: 'picture', runs: Uint16Array.of(1, 1, 1, 1) });
    look();
    expect(marked()).toBeNull();
    change('Knot', { kind: 'paint', layer: 'picture', runs: Uint16Array.of(1, 1, 1, 2) });
    look();
    expect(marked()).toBeNull();
  });

  it('are the knots that tidying would change while it is looked at, and then again what was asked for', () => {
    look();
    toggleMarks('short-runs');
    const before = marked();
    startTidying();
    expect(marked()).toEqual(['....', '.x..', '....', '....']);
    dropTidied();
    expect(marked()).toEqual(before);
  });

  it('never belong to a chart of another size', () => {
    look();
    toggleMarks('lone-knots');
    expect(marked()).not.toBeNull();
    const wider = { ...open().chart, columns: 5 };
    expect(cellsToMark(wider, findings.getState(), 'lone-knots', null)).toBeNull();
    change('Resize', { kind: 'resize', columns: 3, rows: 3, sheets: sheetsOf(3) });
    expect(studio.getState().marked).toBeNull();
  });

  it('are all gone when the screen is left', () => {
    look();
    toggleMarks('lone-knots');
    stop();
    expect(studio.getState().marked).toBeNull();
  });
});

function sheetsOf(side: number): Record<string, Uint8Array[]> {
  return { picture: Array.from({ length: side }, () => new Uint8Array(side).fill(1)) };
}
