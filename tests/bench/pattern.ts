/**
 * How long the PDF pattern of each demo design takes, from the design to its bytes, and how large it is; and how a chart of
 * 200 x 300 cells is drawn, beside the same page drawn with one rectangle and one text for each cell.
 */
import { writePatternPdf } from '../../app/services/pattern/draw-pdf.ts';
import { makePattern } from '../../app/services/pattern/make-pattern.ts';
import { flatten } from '../../shared/chart/chart.ts';
import { demoDesigns } from '../../shared/demos/demo-designs.ts';
import type { Design } from '../../shared/design/design.ts';
import type { PatternPart } from '../../shared/design/pattern-schema.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { layOutPattern } from '../../shared/pattern/lay-out-pattern.ts';
import type { PatternInput } from '../../shared/pattern/pattern-input.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { mottledDesign } from './parts/mottled-design.ts';
import { ourChartPage, plainChartPage } from './parts/one-chart-page.ts';
import { inWords, timesMs } from './parts/times-ms.ts';
import { shadedDesign } from './plan/shaded-design.ts';

const date = new Date('2026-01-01T12:00:00Z');

await benchDemos();
for (const [name, design] of [
  ['shaded as a photograph, 10 yarns', shadedDesign(200, 300)],
  ['mottled at random, 6 yarns', mottledDesign(200, 300)],
] as const) {
  await benchLargeChart(name, design);
}
benchPreview(shadedDesign(400, 600));

async function benchDemos(): Promise<void> {
  for (const { make } of demoDesigns) {
    const design = make();
    for (const paper of ['a4', 'letter'] as const) {
      let size = '';
      const times = await timesMs(5, async () => {
        const made = await makePattern(design, { paper, units: 'both', date });
        if (!made.ok) throw new Error(made.problem.sentence);
        size = `${made.value.pages} pages, ${made.value.bytes.length} bytes`;
      });
      console.log(`${design.columns} x ${design.rows}, ${paper}: ${inWords(times)}; ${size}`);
    }
  }
}

async function benchLargeChart(name: string, design: Design): Promise<void> {
  console.log(`\n${design.columns} x ${design.rows} cells, ${name}:`);
  const chart = flatten(design);
  for (const [how, draw] of [
    ['one page, ours', ourChartPage],
    ['one page, plain pdfkit', plainChartPage],
  ] as const) {
    let bytes = 0;
    const times = await timesMs(5, async () => {
      bytes = (await draw(chart, design.yarns)).length;
    });
    console.log(`  ${how}: ${inWords(times)}; ${kib(bytes)}`);
  }
  const input = inputFor(design);
  await benchParts('  the chart on its pages', input, ['chart']);
  await benchParts('  the whole pattern, planned already', input);
}

async function benchParts(name: string, input: PatternInput, parts?: readonly PatternPart[]): Promise<void> {
  const composed = parts ? { ...input, design: { ...input.design, pattern: { parts: [...parts] } } } : input;
  let size = '';
  let layoutMs = 0;
  const times = await timesMs(5, async () => {
    const start = performance.now();
    const document = layOutPattern(composed);
    layoutMs = performance.now() - start;
    const bytes = (await writePatternPdf(document, { date }))!;
    size = `${document.pages.length} pages, ${kib(bytes.length)}`;
  });
  console.log(`${name}: ${inWords(times)}, of which ${layoutMs.toFixed(0)} ms layout; ${size}`);
}

/** What the preview waits for. */
function benchPreview(design: Design): void {
  const input = inputFor(design);
  const chartOnly = {
    ...input,
    design: { ...design, pattern: { parts: ['map', 'chart'] as PatternPart[] } },
  };
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    layOutPattern(chartOnly);
    return performance.now() - start;
  });
  const pages = layOutPattern(chartOnly).pages.length;
  const median = [...times].sort((a, b) => a - b)[2]!;
  console.log(
    `\n${design.columns} x ${design.rows}: map and chart laid out in ${median.toFixed(0)} ms, ${pages} pages`,
  );
}

function inputFor(design: Design): PatternInput {
  const chart = flatten(design);
  const plan = planStrands(design, chart, { effort: 'quick' });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  return { design, chart, plan: plan.value, materials, paper: 'a4', units: 'both' };
}

function kib(bytes: number): string {
  return `${(bytes / 1024).toFixed(0)} KiB`;
}
