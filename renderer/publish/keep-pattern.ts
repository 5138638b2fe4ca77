/** Keeps the pages true to the open design and to how the copy is printed: a worker makes them anew at each change. */
import type { Chart } from '../../shared/chart/chart.ts';
import type { Design } from '../../shared/design/design.ts';
import { copyOf } from '../../shared/pattern/copy.ts';
import type { PatternAnswer, PatternQuestion, PatternSheet } from '../planning/pattern-maker.ts';
import type { OpenDesign } from '../store/state.ts';
import { studio } from '../store/studio.ts';
import { imprintNow, onImprint, readImprint } from './imprint/imprint-state.ts';
import { beginPages, forgetPages, type PatternView, patternView } from './pattern-view.ts';

export interface PatternKeeper {
  /** Makes the full plan again, where it was stopped. */
  again(): void;
  stop(): void;
  forget(): void;
}

/** Until it is forgotten. */
export function keepPattern(): PatternKeeper {
  beginPages(studio.getState().open?.opening);
  const worker = new Worker(new URL('../planning/pattern.worker.ts', import.meta.url), { type: 'module' });
  const tell = (question: PatternQuestion) => worker.postMessage(question);
  let number = 0;

  const ask = () => {
    const { open } = studio.getState();
    if (!open) return;
    number++;
    tell({ kind: 'pattern', number, ...planned(open), sheet: sheetNow(open) });
    patternView.setState({ effort: 'quick', progress: 0, isBehind: true });
  };

  worker.addEventListener('message', ({ data }: MessageEvent<PatternAnswer>) => {
    if (data.number === number) patternView.setState((view) => taken(data, view));
  });
  /** The plan stays, unless the copy is for the other hand. */
  const layOut = () => {
    const { open } = studio.getState();
    if (!open) return;
    number++;
    tell({ kind: 'sheet', number, pattern: open.design.pattern, sheet: sheetNow(open) });
    patternView.setState({ isBehind: true });
  };
  const unsubscribe = [
    studio.subscribe(({ open, settings }, before) => {
      if (!open) return;
      if (
        !before.open ||
        !isSameChart(open.chart, before.open.chart) ||
        !isPlannedAlike(open.design, before.open.design)
      )
        ask();
      else if (
        open.design.pattern !== before.open.design.pattern ||
        settings.paper !== before.settings.paper ||
        settings.units !== before.settings.units
      )
        layOut();
    }),
    patternView.subscribe((view, before) => view.preparedFor !== before.preparedFor && layOut()),
    onImprint(layOut),
  ];
  void readImprint();
  ask();
  return {
    again: ask,
    stop() {
      tell({ kind: 'stop' });
      patternView.setState({ progress: null });
    },
    forget() {
      for (const each of unsubscribe) each();
      worker.terminate();
      forgetPages();
    },
  };
}

/** What has no say in a pattern is left out: the layers, and the picture under the chart, which may be large. */
function planned({ design, chart }: OpenDesign): Pick<OpenDesign, 'design' | 'chart'> {
  return { chart, design: { ...design, layers: [], reference: null } };
}

/** Each change of the design brings a chart of its own, also one that touches no cell. */
function isSameChart(a: Chart, b: Chart): boolean {
  return (
    a === b ||
    (a.columns === b.columns &&
      a.rows === b.rows &&
      a.startCorner === b.startCorner &&
      a.cells.every((code, cell) => code === b.cells[cell]))
  );
}

/** Whether two states of the design differ in nothing but how the pattern is composed. */
function isPlannedAlike(a: Design, b: Design): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]) as Set<keyof Design>;
  return [...keys].every((key) => key === 'pattern' || a[key] === b[key]);
}

function sheetNow({ design }: OpenDesign): PatternSheet {
  const { paper, units } = studio.getState().settings;
  const { preparedFor } = patternView.getState();
  return { paper, units, copy: { ...copyOf(design), preparedFor }, imprint: imprintNow() };
}

function taken(answer: PatternAnswer, { progress }: PatternView): Partial<PatternView> {
  switch (answer.kind) {
    case 'pages': {
      const { document, effort, findings, plan, firstTexts } = answer;
      return {
        document,
        effort,
        findings,
        plan,
        firstTexts,
        isBehind: false,
        problem: '',
        progress: effort === 'full' ? null : progress,
      };
    }
    case 'progress':
      // It may have been on its way when planning was stopped.
      return progress === null ? {} : { progress: answer.done };
    case 'problem':
      return { document: null, findings: null, isBehind: false, problem: answer.sentence, progress: null };
  }
}
