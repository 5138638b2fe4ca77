/** What is shown over the chart. */
import type { CommandId } from '../../shared/commands.ts';
import { runCommand } from '../shell/command-bus.ts';
import { commandById, keyLabel } from '../shell/keys.ts';
import { type PlanView, usePlans } from './plans/plans.ts';

const views: readonly (readonly [PlanView, CommandId])[] = [
  ['strands', 'plan-strands'],
  ['live', 'plan-live'],
  ['loose-ends', 'plan-loose-ends'],
  ['long-carries', 'plan-long-carries'],
  ['worst-rows', 'plan-worst-rows'],
];

export function PlanViewChoice() {
  const view = usePlans((state) => state.view);
  return (
    <fieldset className="plan-views" aria-label="Shown over the chart">
      {views.map(([each, command]) => {
        const { label, letter = '' } = commandById(command);
        return (
          <button
            type="button"
            key={each}
            aria-pressed={view === each}
            title={letter ? `${label} (${keyLabel(commandById(command))})` : label}
            onClick={() => runCommand(command)}
          >
            {label}
          </button>
        );
      })}
    </fieldset>
  );
}
