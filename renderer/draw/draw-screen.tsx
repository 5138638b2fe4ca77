/** Draw: yarns at the left, the hanging in the middle, layers, symmetry and what it takes at the right, tools below. */
import { useEffect } from 'react';
import type { CommandId } from '../../shared/commands.ts';
import { limits } from '../../shared/design/limits.ts';
import { keepPlanning } from '../planning/keep-planning.ts';
import { handleCommands } from '../shell/command-bus.ts';
import type { Tool } from '../store/state.ts';
import { changeDrawing, studio } from '../store/studio.ts';
import { useStudio } from '../store/use-studio.ts';
import { ChartView } from './chart-view.tsx';
import { costCommands } from './cost/cost-commands.ts';
import { CostPanel } from './cost/cost-panel.tsx';
import { TidyBar } from './cost/tidy-bar.tsx';
import { FactsPanel } from './facts-panel.tsx';
import { drawBorder } from './hand/border-preview.ts';
import { changeHanging } from './hanging-dialog.tsx';
import { layerCommands } from './layers/layer-deeds.ts';
import { LayerPanel } from './layers/layer-panel.tsx';
import { readMotifs, removeMotif, renameMotif } from './patch/keep-motif.tsx';
import { patchCommands } from './patch/patch-deeds.tsx';
import { readRowsAsText } from './rows-text/rows-dialog.tsx';
import { SidePart } from './side-part.tsx';
import { sizeCommands } from './size/size-deeds.tsx';
import { symmetryCommands } from './symmetry/symmetry-deeds.ts';
import { SymmetryPanel } from './symmetry/symmetry-panel.tsx';
import { ToolBar } from './tool-bar.tsx';
import { ViewBar } from './view/view-bar.tsx';
import { viewCommands } from './view/view-commands.ts';
import { TouchingPanel } from './yarns/touching/touching-panel.tsx';
import { yarnCommands } from './yarns/yarn-commands.ts';
import { YarnPanel } from './yarns/yarn-panel.tsx';
import './draw.css';

export function DrawScreen() {
  const opening = useStudio((state) => state.open?.opening);
  useEffect(() => (opening ? handleCommands(drawCommands) : undefined), [opening]);
  useEffect(() => (opening ? keepPlanning() : undefined), [opening]);
  useEffect(() => {
    readMotifs();
  }, []);
  if (!opening) return null;
  return (
    <div className="draw">
      <YarnPanel />
      <div className="chart-column">
        <ViewBar />
        <ChartView key={opening} />
      </div>
      <aside className="side" aria-label="Layers, symmetry, cost and this hanging">
        <SidePart title="Layers">
          <LayerPanel />
        </SidePart>
        <SidePart title="Symmetry">
          <SymmetryPanel />
        </SidePart>
        <SidePart title="What it costs">
          <CostPanel />
        </SidePart>
        <SidePart title="This hanging">
          <FactsPanel />
        </SidePart>
        <SidePart title="What touches what" part="touching">
          <TouchingPanel />
        </SidePart>
      </aside>
      <TidyBar />
      <ToolBar />
    </div>
  );
}

const tool = (name: Tool) => () => studio.setState({ tool: name, ghost: null });

/** One cell wider or narrower. */
function widen(by: 1 | -1): void {
  const { width } = studio.getState().drawing;
  changeDrawing({ width: Math.min(limits.nibCells, Math.max(1, width + by)) });
}

const drawCommands = {
  'tool-knot': tool('knot'),
  'tool-line': tool('line'),
  'tool-rectangle': tool('rectangle'),
  'tool-ellipse': tool('ellipse'),
  'tool-fill': tool('fill'),
  'tool-text': tool('text'),
  'tool-unpick': tool('unpick'),
  'tool-match': tool('match'),
  'tool-replace': tool('replace'),
  'tool-patch': tool('patch'),
  'tool-motif': tool('motif'),
  'tool-border': tool('border'),
  'draw-border': drawBorder,
  wider: () => widen(1),
  narrower: () => widen(-1),
  ...patchCommands,
  ...symmetryCommands,
  ...layerCommands,
  ...sizeCommands,
  'rename-motif': renameMotif,
  'remove-motif': removeMotif,
  ...viewCommands,
  'rows-text': readRowsAsText,
  ...yarnCommands,
  ...costCommands,
  hanging: changeHanging,
} satisfies Partial<Record<CommandId, () => void>>;
