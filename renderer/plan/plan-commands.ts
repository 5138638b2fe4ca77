import type { CommandId } from '../../shared/commands.ts';
import { toggleFold } from './columns/folds.ts';
import { showLeaf } from './leaves/leaves.ts';
import { beginCarry, pinCut, pinNoCarry, removePins } from './pins/pin-deeds.ts';
import { chooseBeside, goToStrand, letGoOfStrand, showView, stepTying, tieTo } from './plan-deeds.ts';
import type { Planner } from './plans/keep-plans.ts';
import { addSwatch, makeSwatch } from './swatches/swatch-deeds.tsx';

/** What the Plan screen carries out while it is shown. */
export function planCommands(planner: Planner) {
  return {
    'plan-strands': () => showView('strands'),
    'plan-live': () => showView('live'),
    'plan-loose-ends': () => showView('loose-ends'),
    'plan-long-carries': () => showView('long-carries'),
    'plan-worst-rows': () => showView('worst-rows'),
    'plan-chart': () => showLeaf('chart'),
    'plan-order': () => showLeaf('order'),
    'plan-sizes': () => showLeaf('sizes'),
    'plan-what-if': () => showLeaf('what-if'),
    'plan-bundles': () => showLeaf('bundles'),
    'plan-materials': () => showLeaf('materials'),
    'fold-settings': () => toggleFold('settings'),
    'fold-figures': () => toggleFold('figures'),
    'add-swatch': addSwatch,
    'make-swatch': makeSwatch,
    'next-strand': () => chooseBeside(1),
    'previous-strand': () => chooseBeside(-1),
    'strand-start': () => goToStrand('start'),
    'strand-end': () => goToStrand('end'),
    'let-go-strand': letGoOfStrand,
    'pin-cut': pinCut,
    'pin-no-carry': pinNoCarry,
    'pin-carry': beginCarry,
    'remove-pins': removePins,
    'next-run': () => stepTying('next-run'),
    'run-before': () => stepTying('run-before'),
    'next-row': () => stepTying('next-row'),
    'row-before': () => stepTying('row-before'),
    'all-tied': () => tieTo(Number.POSITIVE_INFINITY),
    'full-plan': () => planner.again(),
    'stop-plan': () => planner.stop(),
  } satisfies Partial<Record<CommandId, () => void>>;
}
