/**
 * Keys of the command table. `Mod` is Command on a Mac and Control elsewhere. Single letters are not handled here:
 * they act on the chart only, where the chart has the focus.
 */
import { type Command, type CommandId, commands } from '../../shared/commands.ts';
import { aboutHost } from '../host.ts';
import { runCommand } from './command-bus.ts';
import { isAsking } from './dialogs.tsx';

/** Carries out the commands' keys until the function that is given back is called. */
export function listenToKeys(): () => void {
  const onKey = (event: KeyboardEvent) => {
    if (isAsking() || event.defaultPrevented) return;
    const command = commands.find(
      (each: Command) => !each.isNative && keysOf(each).some((keys) => matches(event, keys)),
    );
    if (!command || isTextKey(event)) return;
    event.preventDefault();
    runCommand(command.id);
  };
  window.addEventListener('keydown', onKey);
  return () => window.removeEventListener('keydown', onKey);
}

function keysOf(command: Command): readonly string[] {
  const mac = aboutHost().platform === 'mac';
  return (mac ? command.macKeys : undefined) ?? command.keys ?? [];
}

/** A command's key as the platform writes it: '⇧⌘S', 'Ctrl+Shift+S', or its letter. */
export function keyLabel(command: Command): string {
  const keys = keysOf(command)[0];
  if (!keys) return command.letter?.toUpperCase() ?? '';
  if (aboutHost().platform !== 'mac') return keys.replace('Mod', 'Ctrl');
  const parts = keys.split(/\+(?!$)/);
  return ['Shift', 'Mod']
    .filter((part) => parts.includes(part))
    .map((part) => (part === 'Mod' ? '⌘' : '⇧'))
    .join('')
    .concat(parts.at(-1) ?? '');
}

export function commandById(id: CommandId): Command {
  return commands.find((each) => each.id === id)!;
}

function matches(event: KeyboardEvent, keys: string): boolean {
  const parts = keys.split(/\+(?!$)/);
  const key = parts.at(-1)!;
  const mac = aboutHost().platform === 'mac';
  const mod = mac ? event.metaKey : event.ctrlKey;
  const other = mac ? event.ctrlKey : event.metaKey;
  if (mod !== parts.includes('Mod') || other || event.altKey) return false;
  // A sign such as + or = may need Shift on one keyboard and not on another; only letters, digits and F1 to F12 tell them apart.
  if (/^([A-Z0-9]|F\d+)$/.test(key) && event.shiftKey !== parts.includes('Shift')) return false;
  return event.key.toUpperCase() === key.toUpperCase();
}

/** In a text field, undo and its like belong to the text. */
function isTextKey(event: KeyboardEvent): boolean {
  return isInText(event.target) && ['z', 'y', 'c', 'v', 'x', 'a'].includes(event.key.toLowerCase());
}

export function isInText(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement) return true;
  const plain = ['checkbox', 'radio', 'range', 'color', 'button'];
  return target instanceof HTMLInputElement && !plain.includes(target.type);
}
