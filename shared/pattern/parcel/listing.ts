/**
 * The listing: the text for the shop's page of a pattern, as plain text with a blank line between its parts. Every figure is the
 * pattern's own.
 */
import type { Language } from '../../design/pattern-schema.ts';
import { formatLength } from '../../units/length.ts';
import { formatMass } from '../../units/mass.ts';
import { formatThickness } from '../../units/thickness.ts';
import { formatTime } from '../../units/time.ts';
import { formatYarnLength } from '../../units/yarn-length.ts';
import { grouped } from '../counted.ts';
import type { PatternInput } from '../pattern-input.ts';
import { listingWords } from '../words/listing-words.ts';

const enough = { enough: true } as const;

/** Letters of one tag, and tags in all: what shops commonly take (common practice, no source). */
const TAG_CHARS = 20;
const TAGS = 13;

export interface ListingInput extends Pick<PatternInput, 'design' | 'materials' | 'units'> {
  readonly language: Language;
  /** The files that are sold, by name. */
  readonly files: readonly string[];
}

export function listingText({ design, materials, units, language, files }: ListingInput): string {
  const words = listingWords[language];
  const { finished, totals, cords, dowel, gauge } = materials;
  const figures = {
    title: design.title,
    size: `${formatLength(finished.widthMm, units)} × ${formatLength(finished.knottedHeightMm, units)}`,
    cords: grouped(materials.columns),
    rows: grouped(materials.rows),
    yarns: materials.yarns.length,
    knots: grouped(totals.knots),
    time: formatTime(totals.seconds),
  };
  const needs = [
    ...materials.yarns.map(({ name, withMarginMm, massG, cutMm }) =>
      words.yarn(
        name,
        formatYarnLength(withMarginMm, units, enough),
        formatMass(cutMm > 0 ? (massG * withMarginMm) / cutMm : 0, units, enough),
      ),
    ),
    words.cord(formatThickness(cords.diameterMm, units), formatYarnLength(cords.totalMm, units, enough)),
    words.dowel(formatThickness(dowel.diameterMm, units), formatLength(dowel.minLengthMm, units, enough)),
    words.tools,
  ];
  const { skill = '', terms = words.terms, welcome = '' } = design.pattern?.texts ?? {};
  return [
    words.heading(design.title),
    [words.paragraph(figures), design.designer && words.designedBy(design.designer)]
      .filter(Boolean)
      .join(' '),
    welcome,
    words.download,
    listed(words.heads.inside, words.inside),
    listed(words.heads.needs, needs),
    listed(words.heads.figures, [
      ...words.figures(figures, grouped(totals.pieces), grouped(totals.looseEnds)),
      gauge.source === 'measured' ? words.measured : words.estimated,
    ]),
    skill && `${words.heads.skill}\n${skill}`,
    listed(words.heads.files, files),
    terms && `${words.heads.terms}\n${terms}`,
    `${words.heads.tags}\n${tagsOf(design.title, words.tags).join(', ')}`,
  ]
    .filter((part) => part !== '')
    .join('\n\n')
    .concat('\n');
}

function listed(head: string, items: readonly string[]): string {
  return [head, ...items.map((item) => `- ${item}`)].join('\n');
}

/** The design's own words before those of the trade. */
function tagsOf(title: string, usual: readonly string[]): string[] {
  const own = title
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word.length > 3)
    .map((word) => word.toLowerCase());
  const tags = [title, ...own, ...usual].filter((tag) => tag.length <= TAG_CHARS && tag !== '');
  return [...new Map(tags.map((tag) => [tag.toLowerCase(), tag])).values()].slice(0, TAGS);
}
