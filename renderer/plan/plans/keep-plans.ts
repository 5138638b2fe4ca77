/**
 * Keeps the plans true to the open design and to the settings that are being tried: asks the worker soon after a change;
 * a newer question takes the place of an older one at once.
 */
import type { Chart } from '../../../shared/chart/chart.ts';
import type { OpenDesign } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';
import { lastFigures } from './last-figures.ts';
import { type PlanSource, plannedAlike } from './planned-alike.ts';
import { forgetPlans, type Plans, plans, shownPlan } from './plans.ts';
import type { PlansAnswer, PlansQuestion } from './plans.worker.ts';
import { tyingPlace } from './tying-place.ts';

/** Time from a change to its question: long enough to join the strokes of a key, short enough to feel live. */
const restMs = 200;

export interface Planner {
  /** Makes the full plan again, where it was stopped. */
  again(): void;
  stop(): void;
  forget(): void;
}

/** Plans the design that is open until it is forgotten. */
export function keepPlans(): Planner {
  const worker = new Worker(new URL('./plans.worker.ts', import.meta.url), { type: 'module' });
  const tell = (question: PlansQuestion) => worker.postMessage(question);
  let asked: PlanSource | null = null;
  /** True where its settings are only tried. */
  let isTried = false;
  /** From 1; 0 where its steps are not known yet. */
  let rowAsked = 0;
  let number = 0;
  let timer = 0;

  const ask = () => {
    timer = 0;
    if (!asked) return;
    number++;
    tell({ kind: 'plan', number, ...asked });
    plans.setState({ progress: 0 });
  };

  const take = (answer: PlansAnswer) => {
    if (answer.kind === 'steps') plans.setState({ steps: answer });
    else if (answer.kind === 'row-steps') plans.setState({ rowSteps: answer });
    else if (answer.kind === 'order') {
      plans.setState({ order: { ...answer, steps: new Map() } });
      askRowsNear();
    } else if (answer.kind === 'order-rows')
      plans.setState(({ order }) => ({ order: withRows(order, answer) }));
    else if (answer.kind === 'bundles') plans.setState({ bundles: answer });
    // What was on its way when the plan was stopped is not its progress any more.
    else if (answer.kind === 'progress' && plans.getState().progress === null) return;
    else if (answer.number === number && timer === 0) {
      plans.setState(taken(answer));
      if (answer.kind === 'planned') {
        rowAsked = 0;
        askSteps();
        askOrder();
        askBundles();
      }
    }
  };

  const askSteps = () => {
    const { tied } = plans.getState();
    const tables = shownPlan(plans.getState())?.tables;
    if (tied === null || !tables) {
      rowAsked = 0;
      plans.setState({ steps: null, rowSteps: null });
      return;
    }
    tell({ kind: 'steps', knots: tied });
    const row = tyingPlace(tables, tied).row + 1;
    if (row !== rowAsked) tell({ kind: 'row-steps', row });
    rowAsked = row;
  };

  const askOrder = () => {
    const wish = plans.getState().orderWish;
    if (wish) tell({ kind: 'order', wish });
  };

  const askRowsNear = () => {
    const { order, rowsNear } = plans.getState();
    const rows = rowsNear.filter((row) => !order?.steps.has(row));
    if (order && rows.length > 0) tell({ kind: 'order-rows', wish: order.wish, rows });
  };

  const askBundles = () => {
    if (plans.getState().wantsBundles) tell({ kind: 'bundles' });
  };

  const follow = () => {
    const { open } = studio.getState();
    const { draft } = plans.getState();
    if (!open) return;
    const now = questionOf(open, draft);
    const before = asked;
    const wasTried = isTried;
    asked = now;
    // A draft that plans nothing otherwise, because it is not whole yet, has tried nothing.
    if (!draft) isTried = false;
    if (before && plannedAlike(before, now)) return;
    isTried = draft !== null;
    if (before)
      plans.setState((state) => ({ settled: false, last: lastFigures(state, { before, now, wasTried }) }));
    clearTimeout(timer);
    timer = window.setTimeout(ask, restMs);
  };

  worker.addEventListener('message', ({ data }: MessageEvent<PlansAnswer>) => take(data));
  const forgets = [
    studio.subscribe((state, before) => {
      if (state.open === before.open) return;
      if (!isSameSize(state.open?.chart, before.open?.chart)) letGoOfCells();
      follow();
    }),
    plans.subscribe((state, before) => {
      if (state.draft !== before.draft) follow();
      if (state.tied !== before.tied) askSteps();
      if (state.orderWish !== before.orderWish) askOrder();
      if (state.rowsNear !== before.rowsNear) askRowsNear();
      if (state.wantsBundles && !before.wantsBundles) askBundles();
    }),
  ];
  follow();
  return {
    again: ask,
    stop() {
      tell({ kind: 'stop' });
      plans.setState({ progress: null });
    },
    forget() {
      for (const each of forgets) each();
      clearTimeout(timer);
      worker.terminate();
      forgetPlans();
    },
  };
}

function isSameSize(a: Chart | undefined, b: Chart | undefined): boolean {
  return a?.columns === b?.columns && a?.rows === b?.rows;
}

/** Where cords and rows come or go, a place no longer means the knot that it meant. */
function letGoOfCells(): void {
  plans.setState({ chosen: null, under: null, carryFrom: null, pinAhead: null });
}

/**
 * What no length, count or time depends on is left out: words, prices, what is owned, what is cut already, and the picture under
 * the chart, which may be large. So nothing is planned again where only a price changes; `priced` puts them in where they are
 * shown.
 */
function questionOf({ design, chart }: OpenDesign, draft: Plans['draft']): PlanSource {
  const { money: _, bundles, ...rest } = design;
  const yarns = rest.yarns.map(({ price: _price, ownedSkeins: _ownedSkeins, ...yarn }) => yarn);
  const words = { title: '', designer: '', notes: '' };
  return {
    chart,
    design: {
      ...rest,
      ...(bundles?.fitted ? { bundles: { fitted: true } } : {}),
      ...words,
      yarns,
      tying: design.tying,
      ...draft,
      layers: [],
      reference: null,
    },
  };
}

/** Rows of a list that is shown no more are left aside. */
function withRows(
  order: Plans['order'],
  { wish, rows }: Extract<PlansAnswer, { kind: 'order-rows' }>,
): Plans['order'] {
  if (order?.wish.yarn !== wish.yarn || order.wish.strand !== wish.strand) return order;
  return {
    ...order,
    steps: new Map([...order.steps, ...rows.map(({ row, steps }) => [row, steps] as const)]),
  };
}

function taken(answer: Extract<PlansAnswer, { number: number }>): Partial<Plans> {
  switch (answer.kind) {
    case 'planned':
      return answer.effort === 'quick'
        ? { quick: answer.planned, full: null, careful: null, problem: '', settled: true }
        : { full: answer.planned, progress: null };
    case 'careful':
      return { careful: answer.figures };
    case 'progress':
      return { progress: answer.done };
    case 'problem':
      return {
        quick: null,
        full: null,
        careful: null,
        problem: answer.sentence,
        progress: null,
        settled: true,
      };
  }
}
