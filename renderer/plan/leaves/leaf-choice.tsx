/** Turns to another leaf of the Plan screen. */
import type { CommandId } from '../../../shared/commands.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { commandById } from '../../shell/keys.ts';
import { useToolbar } from '../../shell/use-toolbar.ts';
import { type Leaf, useLeaf } from './leaves.ts';

const leaves: readonly (readonly [Leaf, CommandId])[] = [
  ['chart', 'plan-chart'],
  ['order', 'plan-order'],
  ['swatches', 'go-swatches'],
  ['sizes', 'plan-sizes'],
  ['bundles', 'plan-bundles'],
  ['materials', 'plan-materials'],
  ['what-if', 'plan-what-if'],
];

export function LeafChoice() {
  const shown = useLeaf();
  const toolbar = useToolbar<HTMLDivElement>();
  return (
    <div className="leaf-choice" role="toolbar" aria-label="Shown in the middle" {...toolbar}>
      {leaves.map(([leaf, command]) => (
        <button type="button" key={leaf} aria-pressed={leaf === shown} onClick={() => runCommand(command)}>
          {commandById(command).label}
        </button>
      ))}
    </div>
  );
}
