/** Keeps the pages true to the open design and to the paper and units chosen: a worker makes them anew at each change. */
import type { PatternAnswer, PatternQuestion, PatternSheet } from '../planning/pattern-maker.ts';
import type { OpenDesign } from '../store/state.ts';
import { studio } from '../store/studio.ts';
import { forgetPages, type PatternView, patternView } from './pattern-view.ts';

export interface PatternKeeper {
  /** Makes the full plan again, where it was stopped. */
  again(): void;
  stop(): void;
  forget(): void;
}

/** Until it is forgotten. */
export function keepPattern(): PatternKeeper {
  const worker = new Worker(new URL('../planning/pattern.worker.ts', import.meta.url), { type: 'module' });
  const tell = (question: PatternQuestion) => worker.postMessage(question);
  let number = 0;

  const ask = () => {
    const { open } = studio.getState();
    if (!open) return;
    number++;
    tell({ kind: 'pattern', number, ...planned(open), sheet: sheetNow() });
    patternView.setState({ effort: 'quick', progress: 0 });
  };

  worker.addEventListener('message', ({ data }: MessageEvent<PatternAnswer>) => {
    if (data.number === number) patternView.setState((view) => taken(data, view));
  });
  const unsubscribe = studio.subscribe((state, before) => {
    if (state.open?.design !== before.open?.design || state.open?.chart !== before.open?.chart) ask();
    else if (
      state.settings.paper !== before.settings.paper ||
      state.settings.units !== before.settings.units
    ) {
      number++;
      tell({ kind: 'sheet', number, sheet: sheetNow() });
    }
  });
  ask();
  return {
    again: ask,
    stop() {
      tell({ kind: 'stop' });
      patternView.setState({ progress: null });
    },
    forget() {
      unsubscribe();
      worker.terminate();
      forgetPages();
    },
  };
}

/** What has no say in a pattern is left out: the layers, and the picture under the chart, which may be large. */
function planned({ design, chart }: OpenDesign): Pick<OpenDesign, 'design' | 'chart'> {
  return { chart, design: { ...design, layers: [], reference: null } };
}

function sheetNow(): PatternSheet {
  const { paper, units } = studio.getState().settings;
  return { paper, units };
}

function taken(answer: PatternAnswer, { progress }: PatternView): Partial<PatternView> {
  switch (answer.kind) {
    case 'pages': {
      const { document, effort } = answer;
      return { document, effort, problem: '', progress: effort === 'full' ? null : progress };
    }
    case 'progress':
      // It may have been on its way when planning was stopped.
      return progress === null ? {} : { progress: answer.done };
    case 'problem':
      return { document: null, problem: answer.sentence, progress: null };
  }
}
