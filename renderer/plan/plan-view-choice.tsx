/** What is shown over the chart, and a word where its colours are not the yarns' own. */
import type { CommandId } from '../../shared/commands.ts';
import { sights } from '../draw/view/sights.ts';
import { runCommand } from '../shell/command-bus.ts';
import { commandById, keyLabel } from '../shell/keys.ts';
import { useToolbar } from '../shell/use-toolbar.ts';
import { useStudio } from '../store/use-studio.ts';
import { type PlanView, usePlans } from './plans/plans.ts';
import { viewCommands } from './view-commands.ts';

const views = Object.entries(viewCommands) as [PlanView, CommandId][];

export function PlanViewChoice() {
  const view = usePlans((state) => state.view);
  const toolbar = useToolbar<HTMLDivElement>();
  const sight = useStudio((state) => state.views.sight);
  const [, , seen, short] = sights.find(([each]) => each === sight)!;
  return (
    <div className="plan-views" role="toolbar" aria-label="Shown over the chart" {...toolbar}>
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
      {short !== '' && (
        <span className="plan-sight" title={`Colours ${seen}`}>
          {short}
        </span>
      )}
    </div>
  );
}
