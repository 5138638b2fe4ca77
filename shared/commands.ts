/**
 * Every command of the studio, once: the system's menu, keys, tooltips and the command list come from this table.
 * Keys follow the platforms' conventions. `Mod` is Command on a Mac and Control elsewhere. A single letter works
 * only while the chart has the focus, and can be switched off in the settings.
 */
export type Menu = 'file' | 'edit' | 'view' | 'draw' | 'go' | 'help';

export interface Command {
  readonly id: string;
  readonly label: string;
  readonly menu: Menu;
  /** Such as 'Mod+Shift+S'. The first is shown, all work. */
  readonly keys?: readonly string[];
  /** Keys on a Mac, where its convention is another. */
  readonly macKeys?: readonly string[];
  /** A letter that works on the chart. */
  readonly letter?: string;
  /** 'design': only while a design is open. 'draw': only on the Draw screen. */
  readonly needs?: 'design' | 'draw';
  /** A rule above this entry in the system's menu. */
  readonly ruleAbove?: boolean;
}

export const commands = [
  { id: 'new-design', label: 'New design…', menu: 'file', keys: ['Mod+N'] },
  { id: 'open', label: 'Open…', menu: 'file', keys: ['Mod+O'] },
  { id: 'picture', label: 'Picture to chart…', menu: 'file', keys: ['Mod+Shift+O'], ruleAbove: true },
  { id: 'save', label: 'Save', menu: 'file', keys: ['Mod+S'], needs: 'design', ruleAbove: true },
  { id: 'save-as', label: 'Save as…', menu: 'file', keys: ['Mod+Shift+S'], needs: 'design' },
  {
    id: 'save-pattern',
    label: 'Pattern as PDF…',
    menu: 'file',
    keys: ['Mod+P'],
    needs: 'design',
    ruleAbove: true,
  },
  { id: 'save-png', label: 'Chart as PNG…', menu: 'file', needs: 'design' },
  { id: 'settings', label: 'Settings…', menu: 'file', keys: ['Mod+,'], ruleAbove: true },
  { id: 'close', label: 'Close', menu: 'file', keys: ['Mod+W'], needs: 'design', ruleAbove: true },

  { id: 'undo', label: 'Undo', menu: 'edit', keys: ['Mod+Z'], needs: 'design' },
  {
    id: 'redo',
    label: 'Redo',
    menu: 'edit',
    keys: ['Mod+Y', 'Mod+Shift+Z'],
    macKeys: ['Mod+Shift+Z'],
    needs: 'design',
  },
  { id: 'add-yarn', label: 'Add a yarn…', menu: 'edit', needs: 'draw', ruleAbove: true },
  { id: 'change-yarn', label: 'Change this yarn…', menu: 'edit', needs: 'draw' },
  { id: 'replace-yarn', label: 'Replace this yarn everywhere…', menu: 'edit', needs: 'draw' },
  { id: 'merge-yarn', label: 'Merge this yarn into another…', menu: 'edit', needs: 'draw' },
  { id: 'remove-yarn', label: 'Remove this yarn', menu: 'edit', needs: 'draw' },
  { id: 'ground-yarn', label: 'Make this yarn the ground', menu: 'edit', needs: 'draw' },
  {
    id: 'hanging',
    label: 'This hanging: size, cords, dowel…',
    menu: 'edit',
    needs: 'design',
    ruleAbove: true,
  },

  { id: 'zoom-in', label: 'Zoom in', menu: 'view', keys: ['Mod+=', 'Mod++'], needs: 'draw' },
  { id: 'zoom-out', label: 'Zoom out', menu: 'view', keys: ['Mod+-'], needs: 'draw' },
  { id: 'zoom-fit', label: 'Whole hanging', menu: 'view', keys: ['Mod+0'], needs: 'draw' },
  { id: 'symbols', label: 'Symbols', menu: 'view', letter: 's', needs: 'draw', ruleAbove: true },

  { id: 'tool-knot', label: 'Knot', menu: 'draw', letter: 'k', needs: 'draw' },
  { id: 'tool-line', label: 'Line', menu: 'draw', letter: 'l', needs: 'draw' },
  { id: 'tool-rectangle', label: 'Rectangle', menu: 'draw', letter: 'r', needs: 'draw' },
  { id: 'tool-fill', label: 'Fill', menu: 'draw', letter: 'f', needs: 'draw' },
  { id: 'tool-unpick', label: 'Unpick', menu: 'draw', letter: 'u', needs: 'draw', ruleAbove: true },
  { id: 'tool-match', label: 'Match', menu: 'draw', letter: 'm', needs: 'draw' },
  { id: 'next-yarn', label: 'Next yarn', menu: 'draw', letter: '.', needs: 'draw', ruleAbove: true },
  { id: 'previous-yarn', label: 'Previous yarn', menu: 'draw', letter: ',', needs: 'draw' },

  { id: 'go-shelf', label: 'Shelf', menu: 'go', keys: ['Mod+1'] },
  { id: 'go-draw', label: 'Draw', menu: 'go', keys: ['Mod+2'], needs: 'design' },
  { id: 'go-publish', label: 'Publish', menu: 'go', keys: ['Mod+3'], needs: 'design' },

  { id: 'find-command', label: 'Find a command…', menu: 'help', keys: ['F1'] },
] as const satisfies readonly Command[];

export type CommandId = (typeof commands)[number]['id'];
