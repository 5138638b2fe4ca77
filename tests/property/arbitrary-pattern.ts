/** Random designs whose pages are laid out: of any size and gauge, with long names in several scripts and up to 64 yarns. */
import fc from 'fast-check';
import { flatten } from '../../shared/chart/chart.ts';
import { BARE, codeOf } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { limits } from '../../shared/design/limits.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import { patternLanguages, patternParts } from '../../shared/design/pattern-schema.ts';
import type { Yarn } from '../../shared/design/schema.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import type { Paper } from '../../shared/pattern/page/papers.ts';
import type { PatternInput } from '../../shared/pattern/pattern-input.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import type { Units } from '../../shared/units/units.ts';
import { alphabet } from '../../shared/yarn/symbols.ts';

const scripts = [
  'Linen of the long shore ',
  'Πράσινο της ελιάς ',
  'Тёмно-синяя шерсть ',
  'Žluťoučký příze ',
  'Unbroken',
];

const arbitraryName = fc
  .tuple(fc.constantFrom(...scripts), fc.integer({ min: 1, max: limits.nameChars }))
  .map(([words, length]) => words.repeat(100).slice(0, length).trim() || 'x');

export interface PatternCase {
  design: Design;
  paper: Paper;
  units: Units;
}

export const arbitraryPattern: fc.Arbitrary<PatternCase> = fc
  .record({
    title: arbitraryName,
    designer: fc.oneof(fc.constant(''), arbitraryName),
    columns: fc.integer({ min: 1, max: 110 }),
    rows: fc.integer({ min: 1, max: 130 }),
    names: fc.array(arbitraryName, { minLength: 1, maxLength: 64 }),
    /** The first cells' look is repeated over the chart with this period. */
    period: fc.integer({ min: 1, max: 9 }),
    bareEvery: fc.integer({ min: 2, max: 200 }),
    pitch: fc.integer({ min: 1, max: 40 }),
    rowHeight: fc.integer({ min: 1, max: 40 }),
    corner: fc.constantFrom('top-left' as const, 'top-right' as const),
    fringe: fc.constantFrom('straight' as const, 'v' as const, 'inverted-v' as const, 'curve' as const),
    fringeMm: fc.integer({ min: 0, max: 600 }),
    language: fc.constantFrom(...patternLanguages),
    rowsForm: fc.constantFrom('long' as const, 'compact' as const),
    fitted: fc.boolean(),
    everyPart: fc.boolean(),
    paper: fc.constantFrom('a4' as const, 'letter' as const),
    units: fc.constantFrom('metric' as const, 'us' as const, 'both' as const),
  })
  .map((each) => {
    const yarns = each.names.map(
      (name, i): Yarn => ({
        id: `y${i + 1}`,
        name,
        color: `#${((i * 2654435) % 0x1000000).toString(16).padStart(6, '0')}`,
        symbol: alphabet[i]!.text,
        diameterMm: 2,
        metresPer100G: 200,
        skeinG: 50,
      }),
    );
    const { title, designer, columns, rows, corner } = each;
    const design = newDesign({ title, designer, columns, rows, yarns, startCorner: corner });
    const cells = Array.from({ length: rows }, (_, r) =>
      Uint8Array.from({ length: columns }, (_, c) => {
        const at = Math.floor(r / each.period) * 7 + Math.floor(c / each.period);
        return (at + 1) % each.bareEvery === 0 ? BARE : codeOf(yarns[at % yarns.length]!.id);
      }),
    );
    return {
      paper: each.paper,
      units: each.units,
      design: {
        ...design,
        fringe: { shape: each.fringe, longMm: each.fringeMm, shortMm: each.fringeMm / 3 },
        pattern: {
          copy: { language: each.language, rowsForm: each.rowsForm },
          ...(each.everyPart && { parts: [...patternParts] }),
        },
        bundles: { fitted: each.fitted },
        swatches: [{ widthMm: each.pitch * 10, cords: 10, heightMm: each.rowHeight * 10, rows: 10 }],
        tying: { ...design.tying, workingLengthMm: 9000 },
        layers: [{ ...design.layers[1]!, rows: cells }],
      },
    };
  });

/** What pages of this design are laid out from. */
export function patternInput({ design, paper, units }: PatternCase): PatternInput {
  const chart = flatten(design);
  const plan = planStrands(design, chart);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  return { design, chart, plan: plan.value, materials, paper, units };
}
