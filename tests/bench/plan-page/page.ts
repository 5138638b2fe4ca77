/**
 * Measures the studio's own workers from the page that asks them: how long live figures take to follow one cell, and
 * how long the page itself is held up by a pattern that is made beside it.
 */
import type { PatternAnswer, PatternQuestion } from '../../../renderer/planning/pattern-maker.ts';
import type { PictureAnswer, PlanAnswer, PlanQuestion } from '../../../renderer/planning/planner.worker.ts';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { copyOf } from '../../../shared/pattern/copy.ts';
import { emptyImprint } from '../../../shared/pattern/imprint.ts';
import { shadedDesign } from '../plan/shaded-design.ts';
import type { RepairQuestion } from './repair.worker.ts';

/** From the question to the answer with the quick plan's figures, for so many edits of one cell, in ms. */
async function edits(columns: number, rows: number, count: number): Promise<number[]> {
  // The bundler finds a worker only where it stands like this.
  const worker = new Worker(new URL('../../../renderer/planning/planner.worker.ts', import.meta.url), {
    type: 'module',
  });
  const design = shadedDesign(columns, rows);
  let chart = flatten(design);
  const below = chance();
  const times: number[] = [];
  // The first ones warm up and are not counted.
  for (let edit = -50; edit < count; edit++) {
    const cells = chart.cells.slice();
    cells[below(cells.length)] = 1 + below(design.yarns.length);
    chart = { ...chart, cells };
    const began = performance.now();
    worker.postMessage({
      number: edit + 51,
      design: { ...design, layers: [] },
      chart,
    } satisfies PlanQuestion);
    await quickAnswer(worker, edit + 51);
    if (edit >= 0) times.push(performance.now() - began);
  }
  worker.terminate();
  return times;
}

function quickAnswer(worker: Worker, number: number): Promise<void> {
  return new Promise((resolve) => {
    const listen = ({ data }: MessageEvent<PictureAnswer | PlanAnswer>) => {
      if (data.kind !== 'plan' || data.number !== number) return;
      worker.removeEventListener('message', listen);
      resolve();
    };
    worker.addEventListener('message', listen);
  });
}

export interface Patterned {
  /** Until the first pages are there, and until those of the full plan are. */
  readonly quickMs: number;
  readonly fullMs: number;
  /** The longest time that the page was held up meanwhile. */
  readonly heldUpMs: number;
  readonly pages: number;
}

async function pattern(columns: number, rows: number): Promise<Patterned> {
  // The bundler finds a worker only where it stands like this.
  const worker = new Worker(new URL('../../../renderer/planning/pattern.worker.ts', import.meta.url), {
    type: 'module',
  });
  const design: Design = shadedDesign(columns, rows);
  const chart = flatten(design);
  const began = performance.now();
  const ticks = watchTicks();
  worker.postMessage({
    kind: 'pattern',
    number: 1,
    design: { ...design, layers: [] },
    chart,
    sheet: { paper: 'a4', units: 'metric', copy: copyOf(design), imprint: emptyImprint },
  } satisfies PatternQuestion);
  let quickMs = 0;
  const done = await new Promise<Pick<Patterned, 'fullMs' | 'pages'>>((resolve) => {
    worker.addEventListener('message', ({ data }: MessageEvent<PatternAnswer>) => {
      if (data.kind !== 'pages') return;
      // A message is only read when somebody looks at it.
      const pages = data.document.pages.length;
      if (data.effort === 'quick') quickMs = performance.now() - began;
      else resolve({ fullMs: performance.now() - began, pages });
    });
  });
  worker.terminate();
  return { ...done, quickMs, heldUpMs: ticks.longest() };
}

/** Watches by how much, at most, a timer of the page is late. */
function watchTicks(): { longest(): number } {
  const everyMs = 5;
  let longest = 0;
  let last = performance.now();
  const timer = setInterval(() => {
    const now = performance.now();
    longest = Math.max(longest, now - last - everyMs);
    last = now;
  }, everyMs);
  return {
    longest() {
      clearInterval(timer);
      return longest;
    },
  };
}

/** Chance that is the same each time: a whole number from 0 to below a limit. */
function chance(): (limit: number) => number {
  let state = 7;
  return (limit) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * limit);
  };
}

/** The repair alone, in a worker: from the changed chart to strands and pieces, in ms. */
function repairs(columns: number, rows: number, count: number): Promise<number[]> {
  // The bundler finds a worker only where it stands like this.
  const worker = new Worker(new URL('./repair.worker.ts', import.meta.url), { type: 'module' });
  return new Promise((resolve) => {
    worker.addEventListener('message', ({ data }: MessageEvent<number[]>) => {
      worker.terminate();
      resolve(data);
    });
    worker.postMessage({ columns, rows, count } satisfies RepairQuestion);
  });
}

const planPage = { edits, repairs, pattern };
export type PlanPage = typeof planPage;
Object.assign(window, planPage);
