import { describe, expect, it } from 'vitest';
import {
  type PatternAnswer,
  PatternMaker,
  type PatternQuestion,
  type PatternSheet,
} from '../../../../renderer/planning/pattern-maker.ts';
import { flatten } from '../../../../shared/chart/chart.ts';
import { demoDesigns } from '../../../../shared/demos/demo-designs.ts';
import type { Design } from '../../../../shared/design/design.ts';
import { apply } from '../../../../shared/design/edits.ts';
import { materialsOf } from '../../../../shared/materials/tally.ts';
import { copyOf, designForCopy } from '../../../../shared/pattern/copy.ts';
import { publishEdition } from '../../../../shared/pattern/editions/edition.ts';
import { emptyImprint } from '../../../../shared/pattern/imprint.ts';
import { layOutPattern } from '../../../../shared/pattern/lay-out-pattern.ts';
import type { PatternDocument } from '../../../../shared/pattern/page/page.ts';
import { planStrands } from '../../../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../../../notation.ts';

const moth = demoDesigns[0]!.make();
const a4: PatternSheet = { paper: 'a4', units: 'metric', copy: copyOf(moth), imprint: emptyImprint };
const letter: PatternSheet = { ...a4, paper: 'letter', units: 'us' };
const leftHanded: PatternSheet = { ...a4, copy: { ...a4.copy, leftHanded: true } };

/** As the screen asks: without what has no say in a pattern. */
function asked(number: number, design: Design, sheet = a4): PatternQuestion {
  const chart = flatten(design);
  return { kind: 'pattern', number, design: { ...design, layers: [], reference: null }, chart, sheet };
}

/** As the host prints it. */
function printed(design: Design, sheet: PatternSheet, effort: 'quick' | 'full' = 'full'): PatternDocument {
  const chart = flatten(design);
  const plan = planStrands(design, chart, { effort });
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, chart, plan.value);
  return layOutPattern({ design, chart, plan: plan.value, materials, ...sheet });
}

/** The answers to a question, where `meanwhile` is done once, when it is first listened to what comes in. */
async function answersTo(question: PatternQuestion, meanwhile?: (maker: PatternMaker) => void) {
  const answers: PatternAnswer[] = [];
  let pauses = 0;
  let ms = 0;
  const maker = new PatternMaker(
    (answer) => answers.push(answer),
    async () => {
      if (++pauses === 1) meanwhile?.(maker);
    },
    // Each look at the clock takes a quarter of a second: planning is slow.
    () => (ms += 250),
  );
  await maker.hear(question);
  return { maker, answers, pages: answers.filter((answer) => answer.kind === 'pages') };
}

describe('a pattern that is made in a worker', () => {
  it('has the pages of a quick plan first, and then the very pages that are printed', async () => {
    const { pages } = await answersTo(asked(1, moth));
    expect(pages.map(({ effort, number }) => [effort, number])).toEqual([
      ['quick', 1],
      ['full', 1],
    ]);
    expect(pages[0]!.document).toEqual(printed(moth, a4, 'quick'));
    expect(pages[1]!.document).toEqual(printed(moth, a4));
    expect(pages[0]!.document).not.toEqual(pages[1]!.document);
  });

  it('obeys the pins of the design', async () => {
    const design = designFromLetters(['aba'], { pins: [{ kind: 'cut', row: 1, cord: 1 }] });
    const { pages } = await answersTo(asked(1, design));
    expect(pages[1]!.document).toEqual(printed(design, a4));
    const { pins: _, ...plain } = design;
    expect(pages[1]!.document).not.toEqual(printed(plain, a4));
  });

  it('goes on planning where another paper is chosen meanwhile, and is laid out for it', async () => {
    const { pages } = await answersTo(asked(1, moth), (maker) =>
      maker.hear({ kind: 'sheet', number: 2, pattern: undefined, sheet: letter }),
    );
    expect(pages.map(({ effort, number }) => [effort, number])).toEqual([
      ['quick', 1],
      ['quick', 2],
      ['full', 2],
    ]);
    expect(pages[2]!.document).toEqual(printed(moth, letter));
  });

  it('is laid out for another paper without another plan', async () => {
    const { maker, answers } = await answersTo(asked(1, moth));
    answers.length = 0;
    await maker.hear({ kind: 'sheet', number: 2, pattern: undefined, sheet: letter });
    expect(answers).toMatchObject([
      { kind: 'pages', number: 2, effort: 'full', document: printed(moth, letter) },
    ]);
  });

  it('is composed otherwise without another plan', async () => {
    const { maker, answers } = await answersTo(asked(1, moth));
    answers.length = 0;
    const pattern = { parts: ['chart' as const], texts: { terms: '' } };
    await maker.hear({ kind: 'sheet', number: 2, pattern, sheet: a4 });
    expect(answers).toMatchObject([{ effort: 'full', document: printed({ ...moth, pattern }, a4) }]);
  });

  it('is laid out once where a name is written faster than its pages', async () => {
    const { maker, answers } = await answersTo(asked(1, moth));
    answers.length = 0;
    const named = (preparedFor: string): PatternSheet => ({ ...a4, copy: { ...a4.copy, preparedFor } });
    const letters = ['W', 'Wa', 'Wan'].map((name, i) =>
      maker.hear({ kind: 'sheet', number: 2 + i, pattern: undefined, sheet: named(name) }),
    );
    await Promise.all(letters);
    expect(answers).toMatchObject([{ number: 4, document: printed(moth, named('Wan')) }]);
  });

  it('is planned anew for the other hand, whose rows begin at the other side', async () => {
    const { maker, answers } = await answersTo(asked(1, moth));
    answers.length = 0;
    await maker.hear({ kind: 'sheet', number: 2, pattern: undefined, sheet: leftHanded });
    const pages = answers.filter((answer) => answer.kind === 'pages');
    expect(pages.map(({ effort }) => effort)).toEqual(['quick', 'full']);
    const mirrored = designForCopy(moth, leftHanded.copy);
    expect(pages[1]!.document).toEqual(printed(mirrored, leftHanded));
    // An edition is published with the plan of the design's own hand.
    expect(pages[1]!.plan).toBe(null);
  });

  it('gives the plan that an edition is published with, and prints that edition with it from then on', async () => {
    const { pages } = await answersTo(asked(1, moth));
    const { plan } = pages.at(-1)!;
    const edit = publishEdition(moth, flatten(moth), plan!, { date: '2031-05-08', note: '' });
    if (!edit.ok) throw new Error(edit.problem.sentence);
    const again = await answersTo(asked(2, apply(moth, edit.value)));
    expect(again.pages.map(({ effort }) => effort)).toEqual(['full']);
    const foot = JSON.stringify(again.pages[0]!.document.pages.at(-1)!.items);
    expect(foot).toContain('Edition 1, 2031-05-08');
  });

  it('is no edition while a text differs from it, and is the edition again, with its plan, when the text is as it was', async () => {
    const { pages } = await answersTo(asked(1, moth));
    const edit = publishEdition(moth, flatten(moth), pages.at(-1)!.plan!, { date: '2031-05-08', note: '' });
    if (!edit.ok) throw new Error(edit.problem.sentence);
    const published = apply(moth, edit.value);
    const { maker, answers } = await answersTo(asked(2, published));
    const foot = () => {
      const last = answers.filter((answer) => answer.kind === 'pages').at(-1)!;
      return JSON.stringify(last.document.pages.at(-1)!.items);
    };
    expect(foot()).toContain('Edition 1');
    const pattern = { texts: { welcome: 'Hello.' } };
    await maker.hear({ kind: 'sheet', number: 3, pattern, sheet: a4 });
    expect(foot()).not.toContain('Edition 1');
    await maker.hear({ kind: 'sheet', number: 4, pattern: published.pattern, sheet: a4 });
    expect(foot()).toContain('Edition 1');
    // How a copy is printed is chosen for each copy, and is no other edition.
    const grey = { ...a4, copy: { ...a4.copy, ink: 'grey' as const } };
    await maker.hear({ kind: 'sheet', number: 5, pattern: { copy: { ink: 'grey' } }, sheet: grey });
    expect(foot()).toContain('Edition 1');
  });

  it('comes with what would disappoint a buyer', async () => {
    const { pages } = await answersTo(asked(1, moth));
    expect(pages[0]!.findings.map(({ kind }) => kind)).toContain('gauge-not-measured');
  });

  it('stays with the quick plan where it is stopped', async () => {
    const { pages } = await answersTo(asked(1, moth), (maker) => maker.hear({ kind: 'stop' }));
    expect(pages.map(({ effort }) => effort)).toEqual(['quick']);
  });

  it('is that of the newest design', async () => {
    const other = designFromLetters(['abba', 'abba']);
    let others: Promise<void> | undefined;
    const { answers } = await answersTo(asked(1, moth), (maker) => {
      others = maker.hear(asked(2, other));
    });
    await others;
    const pages = answers.filter((answer) => answer.kind === 'pages');
    expect(pages.map(({ effort, number }) => [effort, number])).toEqual([
      ['quick', 1],
      ['quick', 2],
      ['full', 2],
    ]);
    expect(pages[2]!.document).toEqual(printed(other, a4));
  });

  it('says why there is none where nothing can be tied', async () => {
    const short = { ...moth, tying: { ...moth.tying, workingLengthMm: 10 } };
    const { answers } = await answersTo(asked(1, short));
    expect(answers).toEqual([
      { kind: 'problem', number: 1, sentence: expect.stringContaining('Make the working length at least') },
    ]);
  });

  it('tells how far the full plan is', async () => {
    const { answers } = await answersTo(asked(1, moth));
    const shares = answers.flatMap((answer) => (answer.kind === 'progress' ? [answer.done] : []));
    expect(shares.toSorted((a, b) => a - b)).toEqual(shares);
    expect(shares.length).toBeGreaterThan(2);
    for (const share of shares) expect(share).toBeLessThan(1);
  });
});
