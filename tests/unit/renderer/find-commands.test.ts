import { describe, expect, it } from 'vitest';
import { findCommands } from '../../../renderer/shell/find-commands.ts';
import { commands } from '../../../shared/commands.ts';

const idsOf = (typed: string) =>
  findCommands(typed, []).flatMap((group) => group.commands.map(({ id }) => id));

describe('finding a command', () => {
  it('takes any words in any order, the menu’s name among them', () => {
    expect(idsOf('mirror symmetry both')).toEqual(['mirror-both', 'mirror-diagonals']);
    expect(idsOf('layer up move cells')).toEqual(['content-up', 'content-up-ten']);
    expect(idsOf('  REDO ')).toEqual(['redo']);
  });

  it('does not mind which apostrophe is typed', () => {
    expect(idsOf("layer's cells left")).toEqual(idsOf('layer’s cells left'));
    expect(idsOf("layer's cells left")).not.toEqual([]);
  });

  it('finds nothing where one of the words is nowhere', () => {
    expect(findCommands('mirror kettle', ['undo'])).toEqual([]);
  });

  it('shows every command under its menu where nothing is typed, and first what was used last', () => {
    const [used, ...menus] = findCommands('', ['tool-fill', 'undo']);
    expect(used?.title).toBe('Used last');
    expect(used?.commands.map(({ id }) => id)).toEqual(['tool-fill', 'undo']);
    expect(menus.map(({ title }) => title).slice(0, 2)).toEqual(['File', 'Edit']);
    expect(menus.flatMap((group) => group.commands)).toHaveLength(commands.length);
  });

  it('has no empty group', () => {
    expect(findCommands('undo', ['save']).map(({ title }) => title)).toEqual(['By name']);
  });

  it.each([
    ['knot', 'tool-knot'],
    ['Text', 'tool-text'],
    ['fill', 'tool-fill'],
    ['stash of yarns', 'stash'],
    ['new design', 'new-design'],
  ])('puts first the one of just that name: %s', (typed, id) => {
    expect(idsOf(typed)[0]).toBe(id);
  });

  it('goes on with names that begin so, and has each command once', () => {
    const ids = idsOf('mirror');
    const begun = commands.filter(({ label }) => label.startsWith('Mirror')).map(({ id }) => id);
    expect(ids.slice(0, begun.length)).toEqual(begun);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it.each([
    ['grid', 'view-rules'],
    ['lines', 'view-rules'],
    ['ruler', 'view-rulers'],
    ['select', 'tool-patch'],
    ['eraser', 'tool-unpick'],
    ['rub out', 'tool-unpick'],
    ['bucket', 'tool-fill'],
    ['colour', 'change-yarn'],
    ['color', 'change-yarn'],
    ['zoom', 'zoom-chart'],
    ['zoom', 'zoom-fit'],
    ['rotate', 'turn-right'],
  ])('is found by plain words for it: %s', (typed, id) => {
    expect(idsOf(typed)).toContain(id);
  });
});
