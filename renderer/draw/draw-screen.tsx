/** Draw: yarns at the left, the hanging in the middle, what it takes at the right, the tools along the bottom. */
import { useEffect } from 'react';
import type { CommandId } from '../../shared/commands.ts';
import { keepPlanning } from '../planning/keep-planning.ts';
import { handleCommands } from '../shell/command-bus.ts';
import type { Tool } from '../store/state.ts';
import { changeViews, studio } from '../store/studio.ts';
import { useStudio } from '../store/use-studio.ts';
import { ChartView } from './chart-view.tsx';
import { FactsPanel } from './facts-panel.tsx';
import { changeHanging } from './hanging-dialog.tsx';
import { ToolBar } from './tool-bar.tsx';
import {
  addAYarn,
  changeChosenYarn,
  makeChosenYarnGround,
  mergeChosenYarn,
  removeChosenYarn,
  replaceChosenYarn,
  stepYarn,
} from './yarn-deeds.tsx';
import { YarnPanel } from './yarn-panel.tsx';
import './draw.css';

export function DrawScreen() {
  const opening = useStudio((state) => state.open?.opening);
  useEffect(() => (opening ? handleCommands(drawCommands) : undefined), [opening]);
  useEffect(() => (opening ? keepPlanning() : undefined), [opening]);
  if (!opening) return null;
  return (
    <div className="draw">
      <YarnPanel />
      <ChartView key={opening} />
      <FactsPanel />
      <ToolBar />
    </div>
  );
}

const tool = (name: Tool) => () => studio.setState({ tool: name });

const drawCommands = {
  'tool-knot': tool('knot'),
  'tool-line': tool('line'),
  'tool-rectangle': tool('rectangle'),
  'tool-fill': tool('fill'),
  'tool-unpick': tool('unpick'),
  'tool-match': tool('match'),
  symbols: () => changeViews({ cells: studio.getState().views.cells === 'symbols' ? 'knots' : 'symbols' }),
  'next-yarn': () => stepYarn(1),
  'previous-yarn': () => stepYarn(-1),
  'add-yarn': addAYarn,
  'change-yarn': changeChosenYarn,
  'replace-yarn': replaceChosenYarn,
  'merge-yarn': mergeChosenYarn,
  'remove-yarn': removeChosenYarn,
  'ground-yarn': makeChosenYarnGround,
  hanging: changeHanging,
} satisfies Partial<Record<CommandId, () => void>>;
