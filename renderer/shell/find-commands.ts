/**
 * Which commands have the words that a person typed: each word anywhere in the label, in the name of the menu or among
 * its plain words, in any order, so that 'mirror symmetry' finds what 'Mirror left and right' in the menu Symmetry does.
 * The command of just that name comes first, then those whose names begin so, then the rest by menu. Where nothing is
 * typed, what was used last comes first, and all else below it.
 */
import { type Command, type CommandId, commands, type Menu, menuLabels } from '../../shared/commands.ts';
import { plainWords } from './plain-words.ts';

type Listed = Command & { readonly id: CommandId };

export interface CommandGroup {
  readonly title: string;
  readonly commands: readonly Listed[];
}

/** Groups, none of them empty; menus in their order. `recent` holds the commands used last, the latest first. */
export function findCommands(typed: string, recent: readonly CommandId[]): CommandGroup[] {
  const name = plain(typed).trim().replace(/\s+/g, ' ');
  const words = name.split(' ').filter(Boolean);
  const found = commands.filter(({ id, label, menu }) => {
    const text = plain(`${menuLabels[menu]} ${label} ${plainWords[id] ?? ''}`);
    return words.every((word) => text.includes(word));
  });
  const named = words.length === 0 ? [] : namedSo(found, name);
  const byMenu = (Object.entries(menuLabels) as [Menu, string][]).map(([menu, title]) => ({
    title,
    commands: found.filter((each) => each.menu === menu && !named.includes(each)),
  }));
  const used = words.length > 0 ? [] : recent.flatMap((id) => commands.filter((each) => each.id === id));
  return [{ title: 'By name', commands: named }, { title: 'Used last', commands: used }, ...byMenu].filter(
    (group) => group.commands.length > 0,
  );
}

/** Those whose names begin so, and first those of just that name. */
function namedSo(found: readonly Listed[], name: string): Listed[] {
  const nameOf = ({ label }: Listed) => plain(label).replace('…', '');
  const begun = found.filter((each) => nameOf(each).startsWith(name));
  return [...begun.filter((each) => nameOf(each) === name), ...begun.filter((each) => nameOf(each) !== name)];
}

/** Small letters without accents and with straight apostrophes, as people type them. */
function plain(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{Mn}/gu, '')
    .replaceAll('’', "'")
    .toLowerCase();
}
