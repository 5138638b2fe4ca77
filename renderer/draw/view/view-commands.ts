/** The commands that change how the hanging is shown. */
import type { CommandId } from '../../../shared/commands.ts';
import { changeViews, studio } from '../../store/studio.ts';
import type { CellView, Views } from '../../store/views.ts';
import { toggleChartPanel } from '../chart-panel.ts';

export const viewCommands = {
  'view-knots': () => changeViews({ cells: 'knots' }),
  'view-flat': () => changeViews({ cells: 'flat' }),
  symbols: () => changeViews({ cells: cellsNow() === 'symbols' ? 'knots' : 'symbols' }),
  'view-finished': () => toggle('finished'),
  'view-distance': () => toggle('distance'),
  'view-rules': () => toggle('rules'),
  'view-rulers': () => toggle('rulers'),
  'view-fade': () => toggle('fade'),
  'sight-normal': () => changeViews({ sight: 'normal' }),
  'sight-protan': () => changeViews({ sight: 'protan' }),
  'sight-deutan': () => changeViews({ sight: 'deutan' }),
  'sight-tritan': () => changeViews({ sight: 'tritan' }),
  'sight-grey': () => changeViews({ sight: 'grey' }),
  reference: () => toggleChartPanel('reference'),
  fringe: () => toggleChartPanel('fringe'),
} satisfies Partial<Record<CommandId, () => void>>;

type Switch = { [V in keyof Views]: Views[V] extends boolean ? V : never }[keyof Views];

function toggle(view: Switch): void {
  changeViews({ [view]: !studio.getState().views[view] });
}

function cellsNow(): CellView {
  return studio.getState().views.cells;
}
