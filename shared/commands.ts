/**
 * Every command of the studio, once: the system's menu, keys, tooltips and the command list come from this table.
 * Keys follow the platforms' conventions. `Mod` is Command on a Mac and Control elsewhere. A single letter works
 * only while the chart has the focus, and can be switched off in the settings.
 */
export type Menu =
  | 'file'
  | 'edit'
  | 'yarn'
  | 'view'
  | 'draw'
  | 'patch'
  | 'layer'
  | 'chart'
  | 'symmetry'
  | 'plan'
  | 'publish'
  | 'go'
  | 'help';

/** What the menus are called, in their order. */
export const menuLabels: Readonly<Record<Menu, string>> = {
  file: 'File',
  edit: 'Edit',
  yarn: 'Yarn',
  view: 'View',
  draw: 'Draw',
  patch: 'Patch',
  layer: 'Layer',
  chart: 'Chart',
  symmetry: 'Symmetry',
  plan: 'Plan',
  publish: 'Publish',
  go: 'Go',
  help: 'Help',
};

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
  /** 'design': only while a design is open. 'draw', 'plan', 'publish': only on the screen of that name. */
  readonly needs?: 'design' | 'draw' | 'plan' | 'publish';
  /** The page hears of it by the platform's own event, so that it works in text too: no key is listened to. */
  readonly isNative?: boolean;
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
  { id: 'save-for-sale', label: 'Everything for selling…', menu: 'file', needs: 'design' },
  { id: 'save-png', label: 'Chart as PNG…', menu: 'file', needs: 'design' },
  { id: 'save-papers', label: 'Papers for the hanging…', menu: 'file', needs: 'design' },
  { id: 'imprint', label: 'Imprint…', menu: 'file' },
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
  { id: 'cut', label: 'Cut', menu: 'edit', keys: ['Mod+X'], needs: 'draw', isNative: true, ruleAbove: true },
  { id: 'copy', label: 'Copy', menu: 'edit', keys: ['Mod+C'], needs: 'draw', isNative: true },
  {
    id: 'copy-seen',
    label: 'Copy what is seen',
    menu: 'edit',
    keys: ['Mod+Shift+C'],
    needs: 'draw',
  },
  { id: 'paste', label: 'Paste', menu: 'edit', keys: ['Mod+V'], needs: 'draw', isNative: true },
  {
    id: 'choose-all',
    label: 'Choose all cells',
    menu: 'edit',
    keys: ['Mod+A'],
    needs: 'draw',
    isNative: true,
  },
  {
    id: 'hanging',
    label: 'This hanging: size, cords, dowel…',
    menu: 'edit',
    needs: 'design',
    ruleAbove: true,
  },
  { id: 'fringe', label: 'Shape the fringe…', menu: 'edit', needs: 'draw' },

  { id: 'add-yarn', label: 'Add a yarn…', menu: 'yarn', needs: 'draw' },
  { id: 'change-yarn', label: 'Change this yarn…', menu: 'yarn', needs: 'draw' },
  { id: 'ground-yarn', label: 'Make this yarn the ground', menu: 'yarn', needs: 'draw' },
  { id: 'yarn-up', label: 'Move this yarn up', menu: 'yarn', needs: 'draw', ruleAbove: true },
  { id: 'yarn-down', label: 'Move this yarn down', menu: 'yarn', needs: 'draw' },
  {
    id: 'replace-yarn',
    label: 'Replace this yarn everywhere…',
    menu: 'yarn',
    needs: 'draw',
    ruleAbove: true,
  },
  { id: 'merge-yarn', label: 'Merge this yarn into another…', menu: 'yarn', needs: 'draw' },
  { id: 'remove-yarn', label: 'Remove this yarn', menu: 'yarn', needs: 'draw' },
  {
    id: 'yarns-that-go',
    label: 'Yarns that go with it…',
    menu: 'yarn',
    needs: 'draw',
    ruleAbove: true,
  },
  { id: 'recolour', label: 'Recolour…', menu: 'yarn', needs: 'draw' },
  { id: 'stash', label: 'Stash of yarns…', menu: 'yarn', needs: 'draw' },
  { id: 'touching', label: 'What touches what', menu: 'yarn', needs: 'draw' },

  { id: 'zoom-in', label: 'Zoom in', menu: 'view', keys: ['Mod+=', 'Mod++'], needs: 'draw' },
  { id: 'zoom-out', label: 'Zoom out', menu: 'view', keys: ['Mod+-'], needs: 'draw' },
  { id: 'zoom-fit', label: 'Whole hanging', menu: 'view', keys: ['Mod+0'], needs: 'draw' },
  { id: 'zoom-chart', label: 'Whole chart', menu: 'view', needs: 'draw' },
  { id: 'zoom-real', label: 'Real size', menu: 'view', needs: 'draw' },
  { id: 'view-knots', label: 'Cells as knots', menu: 'view', needs: 'draw', ruleAbove: true },
  { id: 'view-flat', label: 'Cells as flat squares', menu: 'view', needs: 'draw' },
  { id: 'symbols', label: 'Symbols', menu: 'view', letter: 's', needs: 'draw' },
  {
    id: 'view-finished',
    label: 'Finished hanging',
    menu: 'view',
    letter: 'g',
    needs: 'draw',
    ruleAbove: true,
  },
  { id: 'view-distance', label: 'From across the room', menu: 'view', letter: 'a', needs: 'draw' },
  { id: 'sight-normal', label: 'Colours in normal sight', menu: 'view', needs: 'draw', ruleAbove: true },
  { id: 'sight-protan', label: 'Colours without red cones (protan)', menu: 'view', needs: 'draw' },
  { id: 'sight-deutan', label: 'Colours without green cones (deutan)', menu: 'view', needs: 'draw' },
  { id: 'sight-tritan', label: 'Colours without blue cones (tritan)', menu: 'view', needs: 'draw' },
  { id: 'sight-grey', label: 'Colours in greys, as in print', menu: 'view', needs: 'draw' },
  { id: 'view-rules', label: 'Rules every ten', menu: 'view', needs: 'draw', ruleAbove: true },
  { id: 'view-rulers', label: 'Tapes along the hanging', menu: 'view', needs: 'draw' },
  { id: 'view-fade', label: 'Fade other layers', menu: 'view', letter: 'd', needs: 'draw' },
  { id: 'mark-lone-knots', label: 'Show lone knots', menu: 'view', needs: 'draw', ruleAbove: true },
  { id: 'mark-short-runs', label: 'Show runs of one knot', menu: 'view', needs: 'draw' },
  { id: 'mark-loose-ends', label: 'Show loose ends', menu: 'view', needs: 'draw' },
  { id: 'reference', label: 'Reference picture…', menu: 'view', needs: 'draw', ruleAbove: true },
  { id: 'read-row', label: 'Read this row', menu: 'view', letter: 'i', needs: 'draw', ruleAbove: true },
  { id: 'rows-text', label: 'Rows as text…', menu: 'view', needs: 'draw' },

  { id: 'tool-knot', label: 'Knot', menu: 'draw', letter: 'k', needs: 'draw' },
  { id: 'tool-line', label: 'Line', menu: 'draw', letter: 'l', needs: 'draw' },
  { id: 'tool-rectangle', label: 'Rectangle', menu: 'draw', letter: 'r', needs: 'draw' },
  { id: 'tool-ellipse', label: 'Ellipse', menu: 'draw', letter: 'e', needs: 'draw' },
  { id: 'tool-fill', label: 'Fill', menu: 'draw', letter: 'f', needs: 'draw' },
  { id: 'tool-text', label: 'Text', menu: 'draw', letter: 't', needs: 'draw' },
  { id: 'tool-unpick', label: 'Unpick', menu: 'draw', letter: 'u', needs: 'draw', ruleAbove: true },
  { id: 'tool-match', label: 'Match', menu: 'draw', letter: 'm', needs: 'draw' },
  { id: 'tool-replace', label: 'Replace yarn', menu: 'draw', letter: 'y', needs: 'draw' },
  { id: 'tool-patch', label: 'Patch', menu: 'draw', letter: 'p', needs: 'draw', ruleAbove: true },
  { id: 'tool-motif', label: 'Motif', menu: 'draw', letter: 'o', needs: 'draw' },
  { id: 'tool-border', label: 'Border', menu: 'draw', letter: 'b', needs: 'draw' },
  { id: 'draw-border', label: 'Draw the border', menu: 'draw', needs: 'draw' },
  { id: 'wider', label: 'Wider', menu: 'draw', letter: '+', needs: 'draw', ruleAbove: true },
  { id: 'narrower', label: 'Narrower', menu: 'draw', letter: '-', needs: 'draw' },
  { id: 'next-yarn', label: 'Next yarn', menu: 'draw', letter: '.', needs: 'draw', ruleAbove: true },
  { id: 'previous-yarn', label: 'Previous yarn', menu: 'draw', letter: ',', needs: 'draw' },

  { id: 'let-go-patch', label: 'Let go of the patch', menu: 'patch', needs: 'draw' },
  { id: 'choose-yarn-cells', label: 'Choose all cells of this yarn', menu: 'patch', needs: 'draw' },
  { id: 'invert-patch', label: 'Choose all other cells', menu: 'patch', needs: 'draw' },
  { id: 'fill-patch', label: 'Fill the patch', menu: 'patch', needs: 'draw', ruleAbove: true },
  { id: 'unpick-patch', label: 'Unpick the patch', menu: 'patch', needs: 'draw' },
  { id: 'gather-patch', label: 'Gather the patch onto this layer', menu: 'patch', needs: 'draw' },
  {
    id: 'copy-in-place',
    label: 'Take up a copy of the patch',
    menu: 'patch',
    needs: 'draw',
    ruleAbove: true,
  },
  { id: 'flip-left-right', label: 'Flip left and right', menu: 'patch', needs: 'draw' },
  { id: 'flip-top-bottom', label: 'Flip top and bottom', menu: 'patch', needs: 'draw' },
  { id: 'turn-right', label: 'Turn a quarter right', menu: 'patch', needs: 'draw' },
  { id: 'turn-left', label: 'Turn a quarter left', menu: 'patch', needs: 'draw' },
  { id: 'turn-half', label: 'Turn by a half', menu: 'patch', needs: 'draw' },
  { id: 'repeat-patch', label: 'Repeat the patch as tiles…', menu: 'patch', needs: 'draw', ruleAbove: true },
  { id: 'keep-motif', label: 'Keep the patch as a motif…', menu: 'patch', needs: 'draw' },
  { id: 'rename-motif', label: 'Rename the motif…', menu: 'patch', needs: 'draw' },
  { id: 'remove-motif', label: 'Remove the motif…', menu: 'patch', needs: 'draw' },

  { id: 'add-layer', label: 'Add a layer', menu: 'layer', needs: 'draw' },
  { id: 'duplicate-layer', label: 'Duplicate this layer', menu: 'layer', needs: 'draw' },
  { id: 'merge-layer-down', label: 'Merge this layer down', menu: 'layer', needs: 'draw' },
  { id: 'remove-layer', label: 'Remove this layer', menu: 'layer', needs: 'draw' },
  { id: 'rename-layer', label: 'Rename this layer', menu: 'layer', needs: 'draw' },
  { id: 'show-layer', label: 'Show or hide this layer', menu: 'layer', needs: 'draw', ruleAbove: true },
  { id: 'lock-layer', label: 'Lock or unlock this layer', menu: 'layer', needs: 'draw' },
  { id: 'layer-above', label: 'Choose the layer above', menu: 'layer', needs: 'draw', ruleAbove: true },
  { id: 'layer-below', label: 'Choose the layer below', menu: 'layer', needs: 'draw' },
  { id: 'layer-up', label: 'Move this layer up', menu: 'layer', needs: 'draw' },
  { id: 'layer-down', label: 'Move this layer down', menu: 'layer', needs: 'draw' },
  {
    id: 'content-left',
    label: 'Move the layer’s cells left',
    menu: 'layer',
    needs: 'draw',
    ruleAbove: true,
  },
  { id: 'content-right', label: 'Move the layer’s cells right', menu: 'layer', needs: 'draw' },
  { id: 'content-up', label: 'Move the layer’s cells up', menu: 'layer', needs: 'draw' },
  { id: 'content-down', label: 'Move the layer’s cells down', menu: 'layer', needs: 'draw' },
  { id: 'content-left-ten', label: 'Move the layer’s cells left by ten', menu: 'layer', needs: 'draw' },
  { id: 'content-right-ten', label: 'Move the layer’s cells right by ten', menu: 'layer', needs: 'draw' },
  { id: 'content-up-ten', label: 'Move the layer’s cells up by ten', menu: 'layer', needs: 'draw' },
  { id: 'content-down-ten', label: 'Move the layer’s cells down by ten', menu: 'layer', needs: 'draw' },

  { id: 'resize', label: 'Resize…', menu: 'chart', needs: 'draw' },
  { id: 'crop', label: 'Crop to the patch', menu: 'chart', needs: 'draw' },
  { id: 'insert-lines', label: 'Insert cords and rows…', menu: 'chart', needs: 'draw', ruleAbove: true },
  { id: 'insert-cord-left', label: 'Insert a cord to the left', menu: 'chart', needs: 'draw' },
  { id: 'insert-cord-right', label: 'Insert a cord to the right', menu: 'chart', needs: 'draw' },
  { id: 'insert-row-above', label: 'Insert a row above', menu: 'chart', needs: 'draw' },
  { id: 'insert-row-below', label: 'Insert a row below', menu: 'chart', needs: 'draw' },
  { id: 'delete-lines', label: 'Delete cords and rows…', menu: 'chart', needs: 'draw', ruleAbove: true },
  { id: 'delete-cord', label: 'Delete this cord', menu: 'chart', needs: 'draw' },
  { id: 'delete-row', label: 'Delete this row', menu: 'chart', needs: 'draw' },
  { id: 'tidy', label: 'Tidy lone knots…', menu: 'chart', needs: 'draw', ruleAbove: true },

  { id: 'symmetry-off', label: 'No symmetry', menu: 'symmetry', letter: 'n', needs: 'draw' },
  {
    id: 'mirror-left-right',
    label: 'Mirror left and right',
    menu: 'symmetry',
    letter: 'v',
    needs: 'draw',
    ruleAbove: true,
  },
  { id: 'mirror-top-bottom', label: 'Mirror top and bottom', menu: 'symmetry', letter: 'h', needs: 'draw' },
  { id: 'mirror-both', label: 'Mirror both ways', menu: 'symmetry', needs: 'draw' },
  { id: 'mirror-diagonal', label: 'Mirror on the diagonal', menu: 'symmetry', needs: 'draw' },
  { id: 'mirror-antidiagonal', label: 'Mirror on the antidiagonal', menu: 'symmetry', needs: 'draw' },
  { id: 'mirror-diagonals', label: 'Mirror on both diagonals', menu: 'symmetry', needs: 'draw' },
  { id: 'half-turn', label: 'Half turn', menu: 'symmetry', needs: 'draw' },
  { id: 'quarter-turn', label: 'Quarter turn', menu: 'symmetry', needs: 'draw' },
  { id: 'quarter-turn-mirrored', label: 'Quarter turn with mirrors', menu: 'symmetry', needs: 'draw' },
  { id: 'translation', label: 'Repeat by translation', menu: 'symmetry', needs: 'draw', ruleAbove: true },
  { id: 'half-drop', label: 'Repeat by half drop', menu: 'symmetry', needs: 'draw' },
  { id: 'repeat-off', label: 'No repeat', menu: 'symmetry', needs: 'draw' },
  {
    id: 'centre-here',
    label: 'Centre in this cell',
    menu: 'symmetry',
    letter: 'c',
    needs: 'draw',
    ruleAbove: true,
  },
  { id: 'centre-middle', label: 'Centre in the middle of the chart', menu: 'symmetry', needs: 'draw' },

  { id: 'plan-strands', label: 'Strands', menu: 'plan', letter: 's', needs: 'plan' },
  { id: 'plan-live', label: 'Hanging at once', menu: 'plan', letter: 'h', needs: 'plan' },
  { id: 'plan-loose-ends', label: 'Loose ends', menu: 'plan', letter: 'e', needs: 'plan' },
  { id: 'plan-long-carries', label: 'Long carries', menu: 'plan', letter: 'c', needs: 'plan' },
  { id: 'plan-worst-rows', label: 'Worst rows', menu: 'plan', letter: 'w', needs: 'plan' },
  {
    id: 'next-strand',
    label: 'Next strand of this yarn',
    menu: 'plan',
    letter: '.',
    needs: 'plan',
    ruleAbove: true,
  },
  { id: 'previous-strand', label: 'Previous strand of this yarn', menu: 'plan', letter: ',', needs: 'plan' },
  { id: 'strand-start', label: 'To the strand’s start', menu: 'plan', letter: 'a', needs: 'plan' },
  { id: 'strand-end', label: 'To the strand’s end', menu: 'plan', letter: 'z', needs: 'plan' },
  { id: 'let-go-strand', label: 'Let go of the strand', menu: 'plan', needs: 'plan' },
  { id: 'pin-cut', label: 'Cut here', menu: 'plan', letter: 'x', needs: 'plan', ruleAbove: true },
  {
    id: 'pin-no-carry',
    label: 'Never carry across here',
    menu: 'plan',
    letter: 'v',
    needs: 'plan',
  },
  { id: 'pin-carry', label: 'Carry from here', menu: 'plan', letter: 'f', needs: 'plan' },
  { id: 'remove-pins', label: 'Remove all pins', menu: 'plan', needs: 'plan' },
  { id: 'next-run', label: 'Tie the next run', menu: 'plan', letter: 'n', needs: 'plan', ruleAbove: true },
  { id: 'run-before', label: 'Back by a run', menu: 'plan', letter: 'b', needs: 'plan' },
  { id: 'next-row', label: 'Tie to the end of the row', menu: 'plan', needs: 'plan' },
  { id: 'row-before', label: 'Back by a row', menu: 'plan', needs: 'plan' },
  { id: 'all-tied', label: 'Show all as tied', menu: 'plan', needs: 'plan' },
  { id: 'plan-chart', label: 'Chart', menu: 'plan', needs: 'plan', ruleAbove: true },
  { id: 'plan-order', label: 'Tying order', menu: 'plan', needs: 'plan' },
  { id: 'plan-sizes', label: 'Sizes', menu: 'plan', needs: 'plan' },
  { id: 'plan-bundles', label: 'Bundles', menu: 'plan', needs: 'plan' },
  { id: 'plan-materials', label: 'Materials', menu: 'plan', needs: 'plan' },
  { id: 'plan-what-if', label: 'What if', menu: 'plan', needs: 'plan' },
  {
    id: 'fold-settings',
    label: 'Show or fold the settings',
    menu: 'plan',
    needs: 'plan',
    ruleAbove: true,
  },
  { id: 'fold-figures', label: 'Show or fold the figures', menu: 'plan', needs: 'plan' },
  { id: 'add-swatch', label: 'Add a swatch…', menu: 'plan', needs: 'plan', ruleAbove: true },
  { id: 'make-swatch', label: 'Make me a swatch…', menu: 'plan', needs: 'plan' },
  { id: 'full-plan', label: 'Make the full plan', menu: 'plan', needs: 'plan', ruleAbove: true },
  { id: 'stop-plan', label: 'Stop the full plan', menu: 'plan', needs: 'plan' },

  { id: 'part-up', label: 'Move this part up', menu: 'publish', needs: 'publish' },
  { id: 'part-down', label: 'Move this part down', menu: 'publish', needs: 'publish' },
  { id: 'leave-out-part', label: 'Leave this part out', menu: 'publish', needs: 'publish' },
  { id: 'usual-parts', label: 'The usual parts', menu: 'publish', needs: 'publish' },
  { id: 'left-hand', label: 'For the left hand', menu: 'publish', needs: 'publish', ruleAbove: true },
  { id: 'large-print', label: 'Large print', menu: 'publish', needs: 'publish' },
  { id: 'rows-beside', label: 'Rows written beside the chart', menu: 'publish', needs: 'publish' },
  {
    id: 'cover-photograph',
    label: 'A photograph for the cover…',
    menu: 'publish',
    needs: 'publish',
    ruleAbove: true,
  },
  { id: 'cover-drawn', label: 'The drawn hanging on the cover', menu: 'publish', needs: 'publish' },
  {
    id: 'publish-edition',
    label: 'Publish an edition…',
    menu: 'publish',
    needs: 'publish',
    ruleAbove: true,
  },
  { id: 'full-pages', label: 'Pages of the full plan', menu: 'publish', needs: 'publish', ruleAbove: true },
  { id: 'stop-pages', label: 'Stay with the quick plan’s pages', menu: 'publish', needs: 'publish' },

  { id: 'go-shelf', label: 'Shelf', menu: 'go', keys: ['Mod+1'] },
  { id: 'go-draw', label: 'Draw', menu: 'go', keys: ['Mod+2'], needs: 'design' },
  { id: 'go-chart', label: 'To the chart', menu: 'go', needs: 'draw' },
  { id: 'go-plan', label: 'Plan', menu: 'go', keys: ['Mod+3'], needs: 'design' },
  { id: 'go-swatches', label: 'Swatches', menu: 'go', needs: 'design' },
  { id: 'go-publish', label: 'Publish', menu: 'go', keys: ['Mod+4'], needs: 'design' },
  { id: 'next-part', label: 'Next part of the screen', menu: 'go', keys: ['F6'], ruleAbove: true },
  { id: 'previous-part', label: 'Previous part of the screen', menu: 'go', keys: ['Shift+F6'] },

  { id: 'find-command', label: 'Find a command…', menu: 'help', keys: ['F1'] },
] as const satisfies readonly Command[];

export type CommandId = (typeof commands)[number]['id'];
