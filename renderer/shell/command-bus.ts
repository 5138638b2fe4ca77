/**
 * Screens say which commands they carry out while they are shown; menus, keys and the command list run them by name.
 */
import type { CommandId } from '../../shared/commands.ts';

type Handlers = Partial<Record<CommandId, () => void>>;

const shown: Handlers[] = [];

/** Carries out these commands until the function that is given back is called. The latest handler of a command wins. */
export function handleCommands(handlers: Handlers): () => void {
  shown.push(handlers);
  return () => {
    shown.splice(shown.indexOf(handlers), 1);
  };
}

/** False where no screen that is shown carries out the command. */
export function runCommand(id: CommandId): boolean {
  const run = shown.findLast((handlers) => handlers[id])?.[id];
  run?.();
  return run !== undefined;
}

export function canRun(id: CommandId): boolean {
  return shown.some((handlers) => handlers[id]);
}
