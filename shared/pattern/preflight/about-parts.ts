/** Parts that a buyer looks for and does not find. */
import type { Design } from '../../design/design.ts';
import type { PatternPart } from '../../design/pattern-schema.ts';
import { counted } from '../../units/counted.ts';
import type { PatternDocument } from '../page/page.ts';
import type { Finding } from './finding.ts';

type Found = Omit<Finding, 'place'>;

export function aboutParts(
  { pages }: Pick<PatternDocument, 'pages'>,
  { bundles }: Pick<Design, 'bundles'>,
): Finding[] {
  const count = (part: PatternPart) => pages.filter((page) => page.part === part).length;
  const lacks = (...parts: readonly PatternPart[]) => parts.every((part) => count(part) === 0);
  const found =
    pages.length === 0
      ? [noPages]
      : [
          chart(lacks),
          map(count),
          bundles?.fitted === true && lacks('cut-list') ? lengths : null,
          ...others(lacks),
        ];
  return found
    .filter((each) => each !== null)
    .map((each) => ({ ...each, place: { on: 'setting', setting: 'parts' } }));
}

const noPages: Found = {
  kind: 'no-pages',
  weight: 'fault',
  sentence: 'None of the parts is printed: there is no page.',
  mend: 'Tick at least the chart among the parts.',
};

const lengths: Found = {
  kind: 'lengths-not-told',
  weight: 'doubt',
  sentence: 'Pieces are cut to measure, but no page says how long each of them is.',
  mend: 'Add the cut list to the parts, or cut every piece at the working length, on the Plan screen under Bundles.',
};

type Lacks = (...parts: readonly PatternPart[]) => boolean;

function chart(lacks: Lacks): Found | null {
  if (!lacks('chart', 'chart-symbols')) {
    if (!lacks('rows')) return null;
    return {
      kind: 'no-rows',
      weight: 'note',
      sentence: 'The rows are not written out: whoever can’t follow a chart by eye can’t tie this pattern.',
      mend: 'Add the written rows to the parts.',
    };
  }
  return lacks('rows')
    ? {
        kind: 'no-chart',
        weight: 'fault',
        sentence: 'Neither the chart nor the written rows are printed: nobody can follow this pattern.',
        mend: 'Add the chart to the parts.',
      }
    : {
        kind: 'rows-only',
        weight: 'doubt',
        sentence: 'The chart is not printed: a buyer sees the picture only in words.',
        mend: 'Add the chart to the parts, or say in the listing that the pattern is in written rows alone.',
      };
}

/** How the pages of a chart lie together can't be told from one of them. */
function map(count: (part: PatternPart) => number): Found | null {
  const most = Math.max(count('chart'), count('chart-symbols'));
  if (most < 2 || count('map') > 0) return null;
  return {
    kind: 'no-map',
    weight: 'note',
    sentence: `The chart takes ${counted(most, 'page')}, and no map shows how they lie together.`,
    mend: 'Add the map of the chart to the parts.',
  };
}

function others(lacks: Lacks): (Found | null)[] {
  return [
    lacks('materials')
      ? {
          kind: 'no-materials',
          weight: 'doubt',
          sentence: 'No page says what to buy.',
          mend: 'Add the materials to the parts.',
        }
      : null,
    lacks('care')
      ? {
          kind: 'no-cautions',
          weight: 'doubt',
          sentence: 'The page of cautions and care is not printed.',
          mend: 'Add it to the parts: blades, fire and cords can hurt somebody.',
        }
      : null,
    lacks('reading')
      ? {
          kind: 'no-reading',
          weight: 'note',
          sentence: 'No page tells how to read the chart: its arrows, marks and key stay unexplained.',
          mend: 'Add ‘How to read and tie the chart’ to the parts.',
        }
      : null,
    lacks('knots')
      ? {
          kind: 'no-knots',
          weight: 'note',
          sentence: 'The knots are not explained: a beginner can’t follow this pattern.',
          mend: 'Add the knots to the parts, or say in the text on skill that they must be known.',
        }
      : null,
  ];
}
