import { describe, expect, it } from 'vitest';
import { flatten } from '../../../../shared/chart/chart.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { limits } from '../../../../shared/design/limits.ts';
import { newDesign } from '../../../../shared/design/new-design.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { copyOf } from '../../../../shared/pattern/copy.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import { plainItems } from '../../../../shared/pattern/page/plain-items.ts';
import { preflight } from '../../../../shared/pattern/preflight/preflight.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';

const symbols = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789@&';

/** As many yarns as a design may have, each with a name as long as names may be, and each tied. */
function crowded(): Design {
  const design = newDesign({ title: 'Harbour', columns: limits.yarns, rows: 2 });
  const yarns = Array.from({ length: limits.yarns }, (_, i) => ({
    ...design.yarns[0]!,
    id: `y${i + 1}` as const,
    symbol: symbols[i]!,
    name: `No. ${i + 1}, ${'dyed with walnut husks '.repeat(9)}`.slice(0, limits.nameChars).trim(),
  }));
  const row = Uint8Array.from({ length: limits.yarns }, (_, i) => i + 1);
  const [layer] = design.layers;
  return { ...design, yarns, layers: [{ ...layer!, rows: [row, row] }], pattern: { parts: ['rows'] } };
}

describe.each(['standard', 'large'] as const)('the key of short rows in %s print', (cells) => {
  it('goes on over pages where it is long, tells every yarn, and leaves the rows their room', () => {
    const design = crowded();
    const chart = flatten(design);
    const plan = planStrands(design, chart);
    if (!plan.ok) throw new Error(plan.problem.sentence);
    const materials = materialsOf(design, chart, plan.value);
    const copy = { ...copyOf(design), cells, rowsForm: 'compact' as const };
    const input = {
      design,
      chart,
      plan: plan.value,
      materials,
      paper: 'letter',
      units: 'both',
      copy,
    } as const;
    const document = layOutPattern(input);
    const kinds = preflight(input, document).map(({ kind }) => kind);
    expect(kinds).not.toContain('beyond-the-edge');
    expect(kinds).not.toContain('texts-overlap');
    const words = document.pages
      .flatMap(({ items }) => plainItems(items))
      .flatMap((item) => (item.kind === 'text' ? [item.text] : []));
    for (let number = 1; number <= limits.yarns; number++)
      expect(words.some((text) => text.startsWith(`No. ${number},`))).toBe(true);
  });
});
