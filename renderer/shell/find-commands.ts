/**
 * Which commands have the words that a person typed: each word anywhere in the label or in the name of the menu, in
 * any order, so that 'mirror symmetry' finds what 'Mirror left and right' in the menu Symmetry does. Where nothing is
 * typed, what was used last comes first, and all else below it.
 */
import { type Command, type CommandId, commands, type Menu, menuLabels } from '../../shared/commands.ts';

export interface CommandGroup {
  readonly title: string;
  readonly commands: readonly (Command & { readonly id: CommandId })[];
}

/** Groups in the order of the menus, none of them empty. `recent` holds the commands used last, the latest first. */
export function findCommands(typed: string, recent: readonly CommandId[]): CommandGroup[] {
  const words = plain(typed).split(/\s+/).filter(Boolean);
  const found = commands.filter(({ label, menu }) => {
    const text = plain(`${menuLabels[menu]} ${label}`);
    return words.every((word) => text.includes(word));
  });
  const byMenu = (Object.entries(menuLabels) as [Menu, string][]).map(([menu, title]) => ({
    title,
    commands: found.filter((each) => each.menu === menu),
  }));
  const used = words.length > 0 ? [] : recent.flatMap((id) => commands.filter((each) => each.id === id));
  return [{ title: 'Used last', commands: used }, ...byMenu].filter((group) => group.commands.length > 0);
}

/** Small letters without accents and with straight apostrophes, as people type them. */
function plain(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{Mn}/gu, '')
    .replaceAll('’', "'")
    .toLowerCase();
}
