import { describe, expect, it } from 'vitest';
import { type Command, commands, menuLabels } from '../../shared/commands.ts';

const all: readonly Command[] = commands;

/** Keys of the platforms' own conventions. Source: common practice of Windows, macOS and the free desktops. */
const conventions: Readonly<Record<string, readonly string[]>> = {
  'new-design': ['Mod+N'],
  open: ['Mod+O'],
  save: ['Mod+S'],
  'save-as': ['Mod+Shift+S'],
  'save-pattern': ['Mod+P'],
  settings: ['Mod+,'],
  close: ['Mod+W'],
  undo: ['Mod+Z'],
  redo: ['Mod+Y', 'Mod+Shift+Z'],
  cut: ['Mod+X'],
  copy: ['Mod+C'],
  paste: ['Mod+V'],
  'choose-all': ['Mod+A'],
  'zoom-in': ['Mod+=', 'Mod++'],
  'zoom-out': ['Mod+-'],
  'zoom-fit': ['Mod+0'],
  'next-part': ['F6'],
  'previous-part': ['Shift+F6'],
  'find-command': ['F1'],
};

/** Keys that a browser or a system keeps for itself, so that a page that took them would surprise. */
const kept = ['Mod+T', 'Mod+L', 'Mod+R', 'Mod+Q', 'Mod+H', 'Mod+Tab', 'F5', 'F11', 'F12', 'Alt+F4'];

function repeated(list: readonly string[]): string[] {
  return list.filter((each, i) => list.indexOf(each) !== i);
}

describe('the table of commands', () => {
  it('has every command once, under a name of its own', () => {
    expect(repeated(all.map(({ id }) => id))).toEqual([]);
    expect(repeated(all.map(({ label, menu }) => `${menu} ${label}`))).toEqual([]);
  });

  it.each([
    ['a Mac', (each: Command) => each.macKeys ?? each.keys ?? []],
    ['other systems', (each: Command) => each.keys ?? []],
  ])('has no key twice on %s', (_, keysOf) => {
    expect(repeated(all.flatMap(keysOf))).toEqual([]);
  });

  it.each(['draw', 'plan'] as const)(
    'has no letter twice on the %s screen, each a small letter or sign',
    (screen) => {
      const letters = all.flatMap(({ letter, needs }) => (needs === screen ? (letter ?? []) : []));
      expect(repeated(letters)).toEqual([]);
      for (const letter of letters) expect(letter).toMatch(/^[a-z.,+-]$/);
    },
  );

  it('uses letters for what is done on the chart only', () => {
    for (const { id, letter, needs } of all)
      if (letter !== undefined) expect(needs, id).toMatch(/^(draw|plan)$/);
  });

  it('keeps to the platforms’ keys, and leaves them theirs', () => {
    for (const [id, keys] of Object.entries(conventions))
      expect(all.find((each) => each.id === id)?.keys, id).toEqual(keys);
    expect(all.flatMap(({ keys }) => keys ?? []).filter((key) => kept.includes(key))).toEqual([]);
  });

  it('puts each command in a menu that has a name, in the order of the menus', () => {
    const order = Object.keys(menuLabels);
    const places = all.map(({ menu }) => order.indexOf(menu));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places).not.toContain(-1);
  });
});
