/**
 * The texts of a pattern as they are first written, from the design's own figures. A designer may put others in their place, see
 * `design.pattern.texts`. A line of a text is a paragraph of its own, or a step.
 */
import type { Design } from '../design/design.ts';
import { fringeMm } from '../gauge/fringe.ts';
import type { Materials } from '../materials/materials.ts';
import { formatLength } from '../units/length.ts';
import { formatMass } from '../units/mass.ts';
import { formatTime } from '../units/time.ts';
import type { Units } from '../units/units.ts';
import type { Copy } from './copy.ts';
import { grouped } from './counted.ts';
import { type FinishingFigures, finishingWords } from './words/finishing-words.ts';
import { listingWords } from './words/listing-words.ts';
import { type Asking, welcomeWords } from './words/welcome-words.ts';

export interface FirstTextsInput {
  readonly design: Design;
  readonly materials: Materials;
  readonly units: Units;
  readonly copy: Pick<Copy, 'language'>;
}

export type PatternTextName = 'welcome' | 'terms' | 'skill' | 'finishing' | 'notes';

/** There are no notes until the designer has some. */
export function firstTexts(input: FirstTextsInput): Readonly<Record<PatternTextName, string>> {
  const { design, materials, units, copy } = input;
  const welcome = welcomeWords[copy.language];
  const { totals, yarns } = materials;
  return {
    welcome: welcome.greeting({
      title: design.title,
      size: sizeWords(input),
      cords: grouped(materials.columns),
      rows: grouped(materials.rows),
      knots: grouped(totals.knots),
      yarns: yarns.length,
      time: formatTime(totals.seconds),
    }),
    skill: welcome.skillText[askingOf(materials)],
    terms: listingWords[copy.language].terms,
    finishing: finishingWords[copy.language].text({
      looseEnds: grouped(totals.looseEnds),
      size: sizeWords(input),
      ...fringeWords(design, units),
      mass: formatMass(totals.massG, units, { enough: true }),
    }),
    notes: '',
  };
}

/** The design's own text, or the first version; empty where the designer has left it out. */
export function textOf(input: FirstTextsInput, name: PatternTextName): string {
  return (input.design.pattern?.texts?.[name] ?? firstTexts(input)[name]).trim();
}

/** Of the knotted picture. */
function sizeWords({ materials: { finished }, units }: FirstTextsInput): string {
  return `${formatLength(finished.widthMm, units)} × ${formatLength(finished.knottedHeightMm, units)}`;
}

function fringeWords(design: Design, units: Units): Pick<FinishingFigures, 'fringe' | 'straight'> {
  const lengths = fringeMm(design.columns, design.fringe);
  const shortest = formatLength(
    lengths.reduce((a, b) => Math.min(a, b)),
    units,
  );
  const longest = formatLength(
    lengths.reduce((a, b) => Math.max(a, b)),
    units,
  );
  return shortest === longest
    ? { fringe: longest, straight: true }
    : { fringe: `${shortest} – ${longest}`, straight: false };
}

/** Difficulty grows with the number of colours and the size of the chart: common practice; where it grows is our own. */
function askingOf({ yarns, totals }: Materials): Asking {
  if (yarns.length <= 4 && totals.knots <= 2000) return 'first';
  return yarns.length <= 10 && totals.knots <= 12_000 ? 'some' : 'much';
}
