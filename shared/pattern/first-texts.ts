/**
 * The texts of a pattern as they are first written, from the design's own figures. A designer may put others in their place, see
 * `design.pattern.texts`. A line of a text is a paragraph of its own, or a step.
 */
import type { Design } from '../design/design.ts';
import type { PatternSettings } from '../design/schema.ts';
import { fringeMm } from '../gauge/fringe.ts';
import type { Materials } from '../materials/materials.ts';
import type { Units } from '../units/units.ts';
import { chosenParts, partsThere } from './chosen-parts.ts';
import type { Copy } from './copy.ts';
import { type Figures, figuresIn } from './flow/figures.ts';
import { readingTexts } from './part-pages/reading-texts.ts';
import { careWords } from './words/care-words.ts';
import { type FinishingFigures, finishingWords } from './words/finishing-words.ts';
import { listingWords } from './words/listing-words.ts';
import { type Asking, welcomeWords } from './words/welcome-words.ts';

export interface FirstTextsInput {
  readonly design: Design;
  readonly materials: Materials;
  readonly units: Units;
  readonly copy: Pick<Copy, 'language'> & Partial<Pick<Copy, 'rowsForm'>>;
}

export type PatternTextName = keyof NonNullable<PatternSettings['texts']>;

/** There are no notes, and no cautions besides the usual ones, until the designer has some. */
export function firstTexts(input: FirstTextsInput): Readonly<Record<PatternTextName, string>> {
  const { design, materials, units, copy } = input;
  const figures = figuresIn(units, copy.language);
  const size = sizeWords(materials, figures);
  const welcome = welcomeWords[copy.language];
  const there = partsThere(design);
  const { totals, yarns } = materials;
  return {
    welcome: welcome.greeting(
      {
        title: design.title,
        size,
        cords: figures.count(materials.columns),
        rows: figures.count(materials.rows),
        knots: figures.count(totals.knots),
        yarns: yarns.length,
        time: figures.time(totals.seconds),
      },
      there,
    ),
    skill: welcome.skillText(askingOf(materials), there),
    terms: listingWords[copy.language].terms,
    finishing: finishingWords[copy.language].text({
      looseEnds: totals.looseEnds > 0 ? figures.count(totals.looseEnds) : null,
      trimmed: figures.length(Math.min(TRIMMED_MM, materials.tying.tailMm || TRIMMED_MM)),
      size,
      fringe: fringeFigures(design, figures),
      mass: figures.enough.mass(totals.massG),
    }),
    ...readingTexts(input),
    care: careWords[copy.language].care.map(({ title, text }) => `${title}: ${text}`).join('\n'),
    cautions: '',
    notes: '',
  };
}

/** The design's own text, or the first version; empty where the designer has left it out. */
export function textOf(input: FirstTextsInput, name: PatternTextName): string {
  return (input.design.pattern?.texts?.[name] ?? firstTexts(input)[name]).trim();
}

/** Of the knotted picture. */
function sizeWords({ finished }: Materials, figures: Figures): string {
  return `${figures.length(finished.widthMm)} × ${figures.length(finished.knottedHeightMm)}`;
}

/** What is left of a loose end that is knotted to its neighbour, 1 in: common practice, no source. Never more than the tail. */
const TRIMMED_MM = 25.4;

function fringeFigures(design: Design, figures: Figures): FinishingFigures['fringe'] {
  const lengths = fringeMm(design.columns, design.fringe);
  const longestMm = lengths.reduce((a, b) => Math.max(a, b));
  if (longestMm === 0) return null;
  return {
    shortest: figures.length(lengths.reduce((a, b) => Math.min(a, b))),
    longest: figures.length(longestMm),
    hasTemplate: chosenParts(design).includes('fringe'),
  };
}

/** Difficulty grows with the number of colours and the size of the chart: common practice; where it grows is our own. */
function askingOf({ yarns, totals }: Materials): Asking {
  if (yarns.length <= 4 && totals.knots <= 2000) return 'first';
  return yarns.length <= 10 && totals.knots <= 12_000 ? 'some' : 'much';
}
