/** The system's menu, from the studio's one table of commands, with what each platform adds by its own convention. */
import type { MenuItemConstructorOptions } from 'electron';
import { type Command, commands, type Menu, menuLabels } from '../../shared/commands.ts';

export function menuTemplate(
  platform: NodeJS.Platform,
  choose: (commandId: string) => void,
): MenuItemConstructorOptions[] {
  const isMac = platform === 'darwin';
  const own = (Object.entries(menuLabels) as [Menu, string][]).map(
    ([menu, label]): MenuItemConstructorOptions => {
      const items = commands
        .filter((each: Command) => each.menu === menu && !each.isNative)
        .flatMap((each) => itemsOf(each, isMac, choose));
      return { label, submenu: [...items, ...added(menu, isMac)] };
    },
  );
  return isMac ? [{ role: 'appMenu' }, ...own.slice(0, -1), { role: 'windowMenu' }, ...own.slice(-1)] : own;
}

/**
 * Text fields need these on a Mac, where keys only work through the menu; elsewhere people look for them here too. They
 * stand for the commands of the table that are native: the page hears of them by the platform's own events.
 */
function added(menu: Menu, isMac: boolean): MenuItemConstructorOptions[] {
  if (menu === 'file' && !isMac) return [{ type: 'separator' }, { role: 'quit' }];
  if (menu === 'edit') {
    return [
      { type: 'separator' },
      { role: 'cut' },
      { role: 'copy' },
      { role: 'paste' },
      { role: 'selectAll' },
    ];
  }
  if (menu === 'view') return [{ type: 'separator' }, { role: 'togglefullscreen' }];
  return [];
}

function itemsOf(
  command: Command,
  isMac: boolean,
  choose: (id: string) => void,
): MenuItemConstructorOptions[] {
  const key = (isMac ? command.macKeys : undefined)?.[0] ?? command.keys?.[0];
  const item: MenuItemConstructorOptions = {
    id: command.id,
    label: command.label,
    click: () => choose(command.id),
    // The page listens to its keys itself; here they are only shown.
    ...(key && { accelerator: acceleratorOf(key), registerAccelerator: false }),
  };
  return command.ruleAbove ? [{ type: 'separator' }, item] : [item];
}

/** 'Mod+Shift+S' as Electron writes it. */
export function acceleratorOf(key: string): string {
  return key.replace(/^Mod\b/, 'CmdOrCtrl').replace(/\+\+$/, '+Plus');
}
