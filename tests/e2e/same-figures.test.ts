/**
 * One place for figures: what the screens show is what the command line tells as JSON, and what is printed. The design has
 * everything that makes figures: swatches, prices, skeins at home, and pieces cut to measure.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { run } from '../../app/cli/run.ts';
import type { Design } from '../../shared/design/design.ts';
import type { Bundles } from '../../shared/materials/bundles/bundles.ts';
import type { Materials } from '../../shared/materials/materials.ts';
import { careWords } from '../../shared/pattern/words/care-words.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { formatCutLength } from '../../shared/units/cut-length.ts';
import { formatLength } from '../../shared/units/length.ts';
import { formatMass } from '../../shared/units/mass.ts';
import { formatMoney } from '../../shared/units/money.ts';
import { formatTime } from '../../shared/units/time.ts';
import { formatUncertain } from '../../shared/units/uncertain.ts';
import { formatYarnLength } from '../../shared/units/yarn-length.ts';
import { designFromLetters } from '../notation.ts';
import { temporaryFolder } from '../temporary-folder.ts';
import { type Drawing, drawing } from './drawing.ts';
import { readPdf } from './read-pdf.ts';

const drawn = designFromLetters([
  'aaaaaaaaaaaaaaaaaaaa',
  'aaaaabbbbbbaaaaaaaaa',
  'aaaaabccccbaaaaddaaa',
  'aaadaabccccbaaaaaaaa',
  'aaaaabbbbbbaaaaaaaaa',
  'aaaaaaaaaaaaaaaaaaaa',
]);
const swatch = {
  widthMm: 100,
  cords: 20,
  heightMm: 96,
  rows: 20,
  yarnMm: 1900,
  knots: 60,
  cordBeforeMm: 104,
};
const design: Design = {
  ...drawn,
  swatches: [
    { ...swatch, cordAfterMm: 100 },
    { ...swatch, widthMm: 101.5, heightMm: 95, yarnMm: 1950, cordAfterMm: 98.5 },
  ],
  yarns: drawn.yarns.map((yarn, i) => ({
    ...yarn,
    price: 4.35 + i / 10,
    ...(i === 0 && { ownedSkeins: 0.04 }),
  })),
  money: {
    currency: 'EUR',
    cordPricePerM: 0.395,
    dowelPrice: 5.9,
    backingPrice: 2.45,
    patternFees: 0,
    hourlyRate: 17.5,
    overheadShare: 0.125,
    retailTimes: 1.85,
  },
  bundles: { fitted: true },
  pattern: { parts: ['cover', 'materials', 'cut-list', 'chart', 'finishing'] },
};

const yarnLength = (mm: number) => formatYarnLength(mm, 'metric', { enough: true });
const mass = (g: number) => formatMass(g, 'metric', { enough: true });
const money = (amount: number) => formatMoney(amount, 'EUR');
const text = (found: string) => found.replace(/\s+/g, ' ').trim();

/** What is told by the command line and printed by it, of the design as the screen has saved it. */
async function toldElsewhere(path: string) {
  const folder = temporaryFolder();
  const larkrow = async (...words: string[]) => {
    let [out, err] = ['', ''];
    const code = await run(words, {
      path: (given) => resolve(folder, given),
      print: (more) => {
        out += more;
      },
      remark: (more) => {
        err += more;
      },
    });
    if (code !== 0) throw new Error(err);
    return out;
  };
  const json = async (verb: string) => JSON.parse(await larkrow(verb, path, '--json'));
  const metric = ['--units', 'metric'];
  await larkrow('pattern', path, '--out', 'pattern', ...metric);
  await larkrow('papers', path, '--out', 'papers', ...metric);
  await larkrow('bundles', path, '--labels', 'labels/labels.pdf');
  const printed = async (under: string) => {
    const name = readdirSync(join(folder, under)).find((each) => each.endsWith('.pdf'))!;
    return (await readPdf(readFileSync(join(folder, under, name)))).pages.join(' ');
  };
  return {
    materials: (await json('materials')) as Materials,
    plan: (await json('plan')) as Plan,
    bundles: (await json('bundles')) as Bundles,
    pattern: await printed('pattern'),
    papers: await printed('papers'),
    labels: await printed('labels'),
  };
}

type Told = Awaited<ReturnType<typeof toldElsewhere>>;

/** The Plan screen, its full plan made. */
async function planning(): Promise<Drawing> {
  const studio = await drawing(design);
  await studio.page.keyboard.press('Control+3');
  await studio.page.getByText('The full plan.').waitFor();
  return studio;
}

async function turnTo(studio: Drawing, leaf: string): Promise<void> {
  const { page } = studio;
  await page
    .getByRole('toolbar', { name: 'Shown in the middle' })
    .getByRole('button', { name: leaf, exact: true })
    .click();
  await page.getByRole('region', { name: leaf, exact: true }).waitFor();
}

/** The cells of the rows that begin with this name, below one heading. */
async function cells({ page }: Drawing, region: string, name: string): Promise<string[]> {
  const found = await page
    .getByRole('region', { name: region, exact: true })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name, exact: true }) })
    .getByRole('cell')
    .allInnerTexts();
  return found.map(text);
}

describe('screen, JSON and print', () => {
  it('tell the same figures of bundles, yarn, their ±, cost and time', async () => {
    vi.stubEnv('LARKROW_HOME', temporaryFolder());
    onTestFinished(() => {
      vi.unstubAllEnvs();
    });
    const studio = await planning();
    const told = await toldElsewhere(join(studio.shelf, 'Drawn.larkrow'));
    await plansAgree(studio, told);
    await bundlesAgree(studio, told);
    await yarnsAgree(studio, told);
    await costsAgree(studio, told);
    expect([studio.errors, studio.foreignRequests, studio.logged]).toEqual([[], [], []]);
  });
});

async function plansAgree({ page }: Drawing, { plan, materials, pattern }: Told): Promise<void> {
  const { totals } = materials;
  const now = async (name: string) =>
    text((await page.getByRole('row', { name }).first().getByRole('cell').first().textContent())!);
  expect(await now('Pieces')).toBe(String(plan.totals.pieces));
  expect(await now('Loose ends')).toBe(String(totals.looseEnds));
  expect(await now('Hanging at once')).toBe(String(plan.totals.liveMax));
  expect(await now('Yarn to cut')).toBe(yarnLength(plan.totals.cutMm));
  expect(await now('Carries and turns')).toBe(formatYarnLength(plan.totals.carriedMm, 'metric'));
  expect(await now('Hours')).toBe(`≈ ${formatTime(totals.seconds)}`);
  await page.getByText(`Used of it: ${formatUncertain(totals.uncertain.yarnUsedMm, yarnLength)},`).waitFor();
  expect([totals.pieces, totals.yarnCutMm, totals.liveMax]).toEqual([
    plan.totals.pieces,
    plan.totals.cutMm,
    plan.totals.liveMax,
  ]);
  expect(pattern).toContain(`${totals.looseEnds} loose ends`);
  expect(pattern).toContain(yarnLength(totals.yarnCutMm));
}

async function bundlesAgree(studio: Drawing, { bundles, materials, pattern, labels }: Told): Promise<void> {
  await turnTo(studio, 'Bundles');
  const { page } = studio;
  const names = new Map(materials.yarns.map(({ id, name }) => [id, name]));
  await page
    .getByText(`${bundles.pieces} pieces of ${materials.yarns.length} yarns: ${yarnLength(bundles.totalMm)}.`)
    .waitFor();
  const saved = formatYarnLength(bundles.savedMm, 'metric', { spare: true });
  await page.getByText(saved).first().waitFor();
  expect(pattern).toContain(saved);
  expect(bundles.totalMm).toBeCloseTo(materials.totals.yarnCutMm, 4);
  for (const [yarn, name] of names) {
    const own = bundles.bundles.filter((bundle) => bundle.yarn === yarn);
    const rows = page.getByRole('region', { name, exact: true }).locator('tbody tr');
    const shown = (await rows.allInnerTexts()).map(text);
    expect(shown.length).toBe(own.length);
    for (const [i, { pieces, cutMm, totalMm }] of own.entries()) {
      const length = formatCutLength(cutMm, 'metric');
      expect(shown[i]).toContain(`${pieces.length} ${length} `);
      expect(pattern).toContain(`${name} ${pieces.length} ${length} ${yarnLength(totalMm)}`);
      expect(labels).toContain(name);
      expect(labels).toContain(length);
    }
  }
}

async function yarnsAgree(studio: Drawing, { materials, plan, pattern, papers }: Told): Promise<void> {
  await turnTo(studio, 'Materials');
  const { page } = studio;
  for (const need of materials.yarns) {
    const [cut, withMargin, , toBuy, , toPay] = await cells(studio, 'Yarn', need.name);
    expect(cut).toBe(`${yarnLength(need.cutMm)} ${formatUncertain(need.uncertain.usedMm, yarnLength)}`);
    expect(withMargin).toBe(
      `${yarnLength(need.withMarginMm)} ${need.skeins} skein${need.skeins === 1 ? '' : 's'}`,
    );
    expect(toBuy).toBe(String(need.toBuySkeins));
    const price = design.yarns.find(({ id }) => id === need.id)!.price!;
    expect(toPay).toBe(money(price * need.toBuySkeins));
    expect(plan.perYarn[need.id]!.cutMm).toBe(need.cutMm);
    const { knots, strands, pieces } = need;
    const row = [
      need.name,
      knots,
      strands,
      pieces,
      yarnLength(need.cutMm),
      mass(need.massG),
      need.skeins,
      '×',
    ];
    expect(pattern).toContain(row.join(' '));
  }
  const { cords, dowel, totals, tying } = materials;
  const withMarginMm = totals.yarnCutMm * (1 + tying.margin);
  const skeins = materials.yarns.reduce((sum, need) => sum + need.skeins, 0);
  const together = await cells(studio, 'Yarn', 'Together');
  expect(together.slice(0, 2)).toEqual([
    `${yarnLength(totals.yarnCutMm)} ${formatUncertain(totals.uncertain.yarnUsedMm, yarnLength)}`,
    `${yarnLength(withMarginMm)} ${skeins} skeins, ${mass(totals.yarnMassG * (1 + tying.margin))}`,
  ]);
  const [leaf] = (await page.getByRole('region', { name: 'Materials', exact: true }).allInnerTexts()).map(
    text,
  );
  expect(leaf).toContain(
    `${formatUncertain(cords.uncertain.totalMm, yarnLength)} and ${mass(cords.massG)} in all`,
  );
  const long = (mm: number) => formatLength(mm, 'metric', { enough: true });
  expect(leaf).toContain(`at least ${formatUncertain(dowel.uncertain.minLengthMm, long)} long`);
  expect(leaf).toContain(text(careWords.en.hangingUp(formatUncertain(totals.uncertain.massG, mass)).text));
  expect(leaf).toContain(`About ${formatTime(totals.seconds)} for`);
  for (const printed of [yarnLength(cords.totalMm), mass(cords.massG), long(dowel.minLengthMm)])
    expect(pattern).toContain(printed);
  expect(papers).toContain(mass(totals.massG));
}

async function costsAgree(studio: Drawing, { materials: { cost }, papers }: Told): Promise<void> {
  const { parts, materials, toPay, labour, overhead, wholesale, retail, yarnToBuy } = cost;
  const shown = await cells(studio, 'Yarn', 'Together');
  expect(shown.at(-1)).toBe(money(yarnToBuy.amount));
  for (const [name, amount] of [
    ['Yarn, all its skeins', parts.yarn],
    ['Cord', parts.cord],
    ['Dowel', parts.dowel],
    ['Backing', parts.backing],
    ['Pattern fees', parts.patternFees],
    ['Cost of materials', materials],
    ['Of that to pay now', toPay],
    ['Labour', labour],
    ['Overhead', overhead],
    ['Wholesale', wholesale],
    ['Retail', retail],
  ] as const)
    expect(await cells(studio, 'Cost and price', name)).toEqual([money(amount.amount), text(amount.formula)]);
  // The price tag among the papers.
  expect(papers).toContain(money(retail.amount));
  await turnTo(studio, 'What if');
  await studio.page.getByText('Full plans.').waitFor();
  const [own] = await cells(studio, 'Side by side', 'Cost of materials');
  expect(own).toBe(money(materials.amount));
}
