import { flatten } from '../../../shared/chart/chart.ts';
import { DESIGN_VERSION } from '../../../shared/design/schema.ts';
import { problem } from '../../../shared/result.ts';
import { planFaults } from '../../../shared/tying/laws/check-plan.ts';
import { liveWarning } from '../../../shared/tying/live-warning.ts';
import { pinFaults } from '../../../shared/tying/pins/pin-faults.ts';
import { planToWish } from '../../../shared/tying/planners/plan-to-wish.ts';
import { counted } from '../../../shared/units/counted.ts';
import { type CliVerb, done } from '../cli-verb.ts';
import { readDesign } from '../read-design.ts';

export const check: CliVerb = {
  use: 'FILE.larkrow',
  details: [
    'Reads the design strictly, plans its strands, and holds the plan to every rule of tying. Tells what the wish for few hanging strands takes, and the pins that no plan obeys.',
  ],
  needs: ['FILE.larkrow'],
  options: {},
  async run({ positionals }, terminal) {
    const design = await readDesign(terminal, positionals[0]!);
    if (!design.ok) return design;
    const { title, columns, rows, yarns, layers, tying } = design.value;
    const chart = flatten(design.value);
    const made = lastOf(planToWish(design.value, chart));
    if (!made.ok) return made;
    const { plan, free } = made.value;
    const [fault] = planFaults(plan, chart);
    if (fault) return problem('unsound-plan', `${positionals[0]}: its plan of strands is wrong: ${fault}`);
    const { knots, strands, pieces, looseEnds, liveMax } = plan.totals;
    const wish = tying.liveWish;
    const warning =
      wish === undefined
        ? null
        : liveWarning({ wish, plan: plan.totals, free: free?.totals ?? null }, 'metric');
    const pins = pinFaults(design.value, chart);
    terminal.print(
      [
        `“${title}” is sound: a design of version ${DESIGN_VERSION}.`,
        `Chart: ${counted(columns, 'cord')}, ${counted(rows, 'row')}, ${counted(knots, 'knot')}; yarns: ${yarns.length}; layers: ${layers.length}.`,
        `Plan: ${counted(strands, 'strand')}, ${counted(pieces, 'piece')}, ${counted(looseEnds, 'loose end')}, ${liveMax} hanging at once at most.`,
        ...(knots === 0 ? ['Every cell is bare: there is nothing to tie.'] : []),
        ...(warning ? [warning] : []),
        ...pins.map(({ sentence }) => `Pin not obeyed. ${sentence}`),
        '',
      ].join('\n'),
    );
    return done;
  },
};

/** What a generator answers at its end, its steps passed over. */
function lastOf<T>(steps: Generator<unknown, T>): T {
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}
