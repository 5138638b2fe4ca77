import { describe, expect, it } from 'vitest';
import type { Design } from '../../shared/design/design.ts';
import { apply } from '../../shared/design/edits.ts';
import { type History, noHistory, record, redo, type Step, undo } from '../../shared/design/history.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { designFromLetters } from '../notation.ts';
import { randomEdit, seeded, whole } from './random-edit.ts';

describe('100,000 random edits with undo and redo among them', () => {
  it('lead back and forth through the same bytes, and at last to those of the start', () => {
    const random = seeded(100_000);
    const start = designFromLetters([
      ['aaaaaaaa', 'abbbbbba', 'abccccba', 'aaaaaaaa', 'dddddddd'],
      ['........', '..e-e...', '.--.....', '......ff', '........'],
    ]);
    let design: Design = start;
    let history: History = noHistory;
    /** What the design was after a step: the text of one step in twenty, and of the start. */
    const texts = new Map<Step | null, string>([[null, writeDesign(start)]]);
    let compared = 0;
    const compare = () => {
      const text = texts.get(history.done.at(-1) ?? null);
      if (text === undefined) return;
      if (writeDesign(design) !== text) throw new Error(`step ${history.done.length} has other bytes`);
      compared++;
    };

    const travel = (way: typeof undo): boolean => {
      const travelled = way(history, design);
      if (!travelled) return false;
      ({ design, history } = travelled);
      compare();
      return true;
    };

    for (let edits = 0; edits < 100_000; ) {
      const dice = whole(random, 10);
      if (dice < 5 && travel(dice < 4 ? undo : redo)) continue;
      const edit = randomEdit(random, design);
      history = record(history, design, 'Edit', edit, Number.POSITIVE_INFINITY);
      design = apply(design, edit);
      if (++edits % 20 === 0) texts.set(history.done.at(-1)!, writeDesign(design));
      // Now and then far back and part of the way forth again; not near the end, so that much is left to undo then.
      if (edits % 1000 === 0 && edits < 80_000) {
        for (let left = whole(random, history.done.length + 1); left > 0; left--) travel(undo);
        for (let left = whole(random, history.undone.length + 1); left > 0; left--) travel(redo);
      }
    }
    expect(compared).toBeGreaterThan(1000);

    const end = writeDesign(design);
    const steps = history.done.length;
    expect(steps).toBeGreaterThan(1000);
    while (travel(undo));
    expect(writeDesign(design)).toBe(texts.get(null));
    while (travel(redo));
    expect(history.done).toHaveLength(steps);
    expect(writeDesign(design)).toBe(end);
  });
});
