/** A column beside the chart, which can be folded to a strip with its name. */
import type { ReactNode } from 'react';
import type { CommandId } from '../../../shared/commands.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { type Side, useFolded } from './folds.ts';
import './columns.css';

interface ColumnProps {
  readonly side: Side;
  readonly name: string;
  readonly children: ReactNode;
}

const commands: Readonly<Record<Side, CommandId>> = { settings: 'fold-settings', figures: 'fold-figures' };

export function Column({ side, name, children }: ColumnProps) {
  const isFolded = useFolded(side);
  const words = isFolded ? `Show: ${name}` : `Fold away: ${name}`;
  return (
    <aside className={`side column of-${side} ${isFolded ? 'folded' : ''}`} aria-label={name}>
      <button
        type="button"
        className="fold plain"
        aria-expanded={!isFolded}
        aria-label={words}
        title={words}
        onClick={() => runCommand(commands[side])}
      >
        <span aria-hidden="true" />
      </button>
      {isFolded ? (
        <p className="column-name" aria-hidden="true">
          {name}
        </p>
      ) : (
        children
      )}
    </aside>
  );
}
