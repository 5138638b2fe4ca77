/**
 * Keeps the store's figures true to the design: asks the planner a moment after each change, one question at a time,
 * and takes only the answer to the latest. Until it comes, the figures say that they are not settled.
 */
import { type OpenDesign, studio } from '../store/studio.ts';
import type { PlanAnswer, PlanQuestion } from './planner.worker.ts';

/** Long enough to join the parts of a stroke, short enough to feel live. */
const restMs = 150;

/** Plans until the function that is given back is called. */
export function keepPlanning(): () => void {
  const worker = new Worker(new URL('./planner.worker.ts', import.meta.url), { type: 'module' });
  let number = 0;
  let isBusy = false;
  let isStale = false;
  let timer = 0;

  const ask = () => {
    const { open } = studio.getState();
    if (!open) return;
    if (isBusy) {
      isStale = true;
      return;
    }
    isBusy = true;
    isStale = false;
    number++;
    worker.postMessage({
      number,
      design: { ...open.design, layers: [] },
      chart: open.chart,
    } satisfies PlanQuestion);
  };

  worker.addEventListener('message', ({ data }: MessageEvent<PlanAnswer>) => {
    isBusy = false;
    if (isStale) {
      ask();
      return;
    }
    if (data.number !== number || !studio.getState().open) return;
    if (data.materials.ok)
      studio.setState({ facts: { materials: data.materials.value, settled: timer === 0, problem: '' } });
    else
      studio.setState({
        facts: { materials: null, settled: true, problem: data.materials.problem.sentence },
      });
  });

  const unsubscribe = studio.subscribe((state, before) => {
    if (!differs(state.open, before.open)) return;
    if (state.facts?.settled) studio.setState({ facts: { ...state.facts, settled: false } });
    clearTimeout(timer);
    timer = window.setTimeout(() => {
      timer = 0;
      ask();
    }, restMs);
  });
  ask();
  return () => {
    unsubscribe();
    clearTimeout(timer);
    worker.terminate();
  };
}

function differs(now: OpenDesign | null, before: OpenDesign | null): boolean {
  if (!now || now === before) return false;
  if (!before) return true;
  return now.chart.cells !== before.chart.cells || now.design !== before.design;
}
