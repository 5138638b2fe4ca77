/** A hanging of one knot: whatever is counted of it is counted in the singular, in every part and paper. */
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../shared/chart/chart.ts';
import { type Language, patternParts } from '../../../shared/design/pattern-schema.ts';
import { bundlesOf } from '../../../shared/materials/bundles/bundles.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { copyOf } from '../../../shared/pattern/copy.ts';
import { hangingPapers } from '../../../shared/pattern/hanging-papers/hanging-papers.ts';
import { layOutHangingPapers } from '../../../shared/pattern/hanging-papers/lay-out-hanging-papers.ts';
import { emptyImprint } from '../../../shared/pattern/imprint.ts';
import { layOutLabels } from '../../../shared/pattern/lay-out-labels.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import { listingText } from '../../../shared/pattern/parcel/listing.ts';
import { shopPictures } from '../../../shared/pattern/parcel/shop-pictures.ts';
import { planStrands } from '../../../shared/tying/plan-strands.ts';
import { stepWords } from '../../../shared/tying/steps/step-words.ts';
import { stepsOfRow } from '../../../shared/tying/steps/steps-of-row.ts';
import { tyingOrder } from '../../../shared/tying/steps/tying-order.ts';
import { designFromLetters } from '../../notation.ts';
import { printedTexts } from '../../printed-texts.ts';

const plural: Readonly<Record<Language, RegExp>> = {
  en: /(?<![\d.,–-])1 (more |cut |loose |lone )?(cords|rows|knots|yarns|pieces|strands|skeins|pages|ends|carries|joins|turns|swatches|sheets|columns|strands hang)\b/,
  de: /(?<![\d.,–-])1 (weitere |zugeschnittene |lose )?(Schnüren?|Reihen|Garnen?|Stücken?|Fäden|Strängen?|Seiten|Enden|Blätter)\b/,
};
/** 'rows 1 to 1', 'cords 1–1': a range of one. */
const range = /(?<!\d)(\d+)( to | bis |–|-)\1(?!\d)/;

function told(letters: readonly string[], language: Language): string[] {
  const design = {
    ...designFromLetters([...letters]),
    pattern: { parts: [...patternParts], copy: { language } },
  };
  const chart = flatten(design);
  const planned = planStrands(design, chart);
  if (!planned.ok) throw new Error(planned.problem.sentence);
  const plan = planned.value;
  const input = {
    design,
    chart,
    plan,
    materials: materialsOf(design, chart, plan),
    paper: 'a4' as const,
    units: 'metric' as const,
    copy: { ...copyOf(design), language, rowsForm: 'long' as const },
    imprint: emptyImprint,
    edition: null,
  };
  const order = tyingOrder(chart, plan);
  const yarnsById = new Map(design.yarns.map((yarn) => [yarn.id, yarn]));
  const steps = letters.flatMap((_, row) =>
    (['long', 'compact'] as const).flatMap((form) =>
      stepsOfRow(order, row + 1).map((step) =>
        stepWords(step, { yarnsById, units: 'metric', form, language }),
      ),
    ),
  );
  return [
    ...printedTexts(layOutPattern(input).pages),
    ...printedTexts(layOutHangingPapers(input, hangingPapers).pages),
    ...printedTexts(layOutLabels({ design, bundles: bundlesOf(order), paper: 'a4', units: 'metric' }).pages),
    ...printedTexts(Object.values(shopPictures({ ...input, language }))),
    ...listingText({ ...input, language, files: [] }).split('\n'),
    ...steps,
  ];
}

describe('a hanging with one of each thing', () => {
  it.each(['en', 'de'] as const)('is told in the singular, in %s', (language) => {
    for (const letters of [['a'], ['a', 'a'], ['ab']]) {
      const texts = told(letters, language);
      expect(texts.length).toBeGreaterThan(100);
      expect(texts.filter((text) => plural[language].test(text) || range.test(text))).toEqual([]);
    }
  });
});
