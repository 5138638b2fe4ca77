/**
 * Keeps the store's figures and the findings true to the design: asks the planner soon after a change, one question at a
 * time. Figures of a design that has changed since are shown as not settled, so that a long stroke does not leave them
 * standing.
 */
import type { OpenDesign } from '../store/state.ts';
import { studio } from '../store/studio.ts';
import { findings, noFindings } from './findings.ts';
import type { PictureAnswer, PlanAnswer, PlanQuestion } from './planner.worker.ts';

/** Time between two questions: long enough to join the parts of a stroke, short enough to feel live. */
const restMs = 150;

/** Plans the design that is open until the function that is given back is called. */
export function keepPlanning(): () => void {
  const worker = new Worker(new URL('./planner.worker.ts', import.meta.url), { type: 'module' });
  let isBusy = false;
  let isStale = false;
  let timer = 0;
  let asked = 0;

  const ask = () => {
    const { open } = studio.getState();
    if (!open) return;
    if (isBusy) {
      isStale = true;
      return;
    }
    isBusy = true;
    isStale = false;
    asked++;
    worker.postMessage({
      number: asked,
      design: { ...open.design, layers: [] },
      chart: open.chart,
    } satisfies PlanQuestion);
  };

  const takePlan = ({ number, full, materials, cost, looseEnds }: PlanAnswer) => {
    // The full answer to an older question may have been on its way.
    if (number !== asked) return;
    isBusy = false;
    const settled = full && !isStale && timer === 0;
    if (isStale) ask();
    findings.setState(({ cells }) => ({ cost, cells: { ...cells, 'loose-ends': looseEnds } }));
    studio.setState({
      facts: materials.ok
        ? { materials: materials.value, settled, problem: '' }
        : { materials: null, settled, problem: materials.problem.sentence },
    });
  };

  worker.addEventListener('message', ({ data }: MessageEvent<PictureAnswer | PlanAnswer>) => {
    if (data.kind === 'picture') takePicture(data);
    else takePlan(data);
  });

  const unsubscribe = studio.subscribe((state, before) => {
    if (!differs(state.open, before.open)) return;
    if (state.facts?.settled) studio.setState({ facts: { ...state.facts, settled: false } });
    if (timer !== 0) return;
    timer = window.setTimeout(() => {
      timer = 0;
      ask();
    }, restMs);
  });
  ask();
  return () => {
    findings.setState(noFindings);
    unsubscribe();
    clearTimeout(timer);
    worker.terminate();
  };
}

/** Loose ends of the plan before are kept until the next is made, unless the chart has another size. */
function takePicture({ columns, rows, loneKnots, shortRuns, pairs }: PictureAnswer): void {
  findings.setState((before) => {
    const isAlike = before.columns === columns && before.rows === rows;
    const looseEnds = isAlike ? before.cells['loose-ends'] : null;
    const cells = { 'lone-knots': loneKnots, 'short-runs': shortRuns, 'loose-ends': looseEnds };
    return { columns, rows, cells, pairs };
  });
}

function differs(now: OpenDesign | null, before: OpenDesign | null): boolean {
  if (!now || now === before) return false;
  if (!before) return true;
  return now.chart.cells !== before.chart.cells || now.design !== before.design;
}
