import { flatten } from '../../../shared/chart/chart.ts';
import { DESIGN_VERSION } from '../../../shared/design/schema.ts';
import { problem } from '../../../shared/result.ts';
import { planFaults } from '../../../shared/tying/check-plan.ts';
import { pinFaults } from '../../../shared/tying/pin-faults.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { type CliVerb, done } from '../cli-verb.ts';
import { readDesign } from '../read-design.ts';

export const check: CliVerb = {
  use: 'FILE.larkrow',
  details: [
    'Reads the design strictly, plans its strands, and holds the plan to every rule of tying. Tells the pins that no plan obeys.',
  ],
  needs: ['FILE.larkrow'],
  options: {},
  async run({ positionals }, terminal) {
    const design = await readDesign(terminal, positionals[0]!);
    if (!design.ok) return design;
    const { title, columns, rows, yarns, layers } = design.value;
    const chart = flatten(design.value);
    const plan = planStrands(design.value, chart);
    if (!plan.ok) return plan;
    const [fault] = planFaults(plan.value, chart);
    if (fault) return problem('unsound-plan', `${positionals[0]}: its plan of strands is wrong: ${fault}`);
    const { knots, strands, pieces, looseEnds, liveMax } = plan.value.totals;
    const pins = pinFaults(design.value, chart);
    terminal.print(
      [
        `“${title}” is sound: a design of version ${DESIGN_VERSION}.`,
        `Chart: ${columns} cords, ${rows} rows, ${knots} knots; yarns: ${yarns.length}; layers: ${layers.length}.`,
        `Plan: ${strands} strands, ${pieces} pieces, ${looseEnds} loose ends, ${liveMax} hanging at once at most.`,
        ...pins.map(({ sentence }) => `Pin not obeyed. ${sentence}`),
        '',
      ].join('\n'),
    );
    return done;
  },
};
