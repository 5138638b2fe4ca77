/** What lies over the chart as elements of the page: handles to drag, the small panel beside them, and notes. */
import { useEffect } from 'react';
import { useStore } from 'zustand';
import { useStudio } from '../store/use-studio.ts';
import type { Surface } from '../surface/surface.ts';
import { chartPanel, closeChartPanel } from './chart-panel.ts';
import { FringeHandles } from './fringe/fringe-handles.tsx';
import { FringePanel } from './fringe/fringe-panel.tsx';
import { ReferencePanel } from './reference/reference-panel.tsx';
import { AwayNote } from './view/away-note.tsx';
import { CentreHandles } from './view/centre-handles.tsx';
import { SymbolsNote } from './view/symbols-note.tsx';
import './handles.css';

export function ChartHandles({ surface }: { surface: Surface }) {
  const isWorking = useStudio(({ views }) => !views.finished && !views.distance);
  const panel = useStore(chartPanel, (state) => state.shown);
  useEffect(() => closeChartPanel, []);
  return (
    <div className="chart-handles">
      {isWorking && <CentreHandles surface={surface} />}
      {panel === 'fringe' && <FringeHandles surface={surface} />}
      {panel === 'fringe' && <FringePanel />}
      {panel === 'reference' && <ReferencePanel />}
      <AwayNote surface={surface} />
      <SymbolsNote surface={surface} />
    </div>
  );
}
