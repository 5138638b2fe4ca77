/**
 * The listing: the text for the shop's page of a pattern, as plain text with a blank line between its parts. Every figure is the
 * pattern's own.
 */
import type { Language } from '../../design/pattern-schema.ts';
import type { GaugeBasis } from '../../materials/materials.ts';
import { chosenParts } from '../chosen-parts.ts';
import { textOf } from '../first-texts.ts';
import { figuresIn } from '../flow/figures.ts';
import type { PatternInput } from '../pattern-input.ts';
import { listingWords } from '../words/listing-words.ts';

/** Letters of one tag, and tags in all: what shops commonly take (common practice, no source). */
const TAG_CHARS = 20;
const TAGS = 13;

export interface ListingInput extends Pick<PatternInput, 'design' | 'materials' | 'units'> {
  readonly language: Language;
  /** The files of the pack that is sold, by name. */
  readonly files: readonly string[];
}

export function listingText({ design, materials, units, language, files }: ListingInput): string {
  const words = listingWords[language];
  const { finished, totals, cords, dowel, gauge } = materials;
  const told = figuresIn(units, language);
  const { enough } = told;
  const figures = {
    title: design.title,
    size: `${told.length(finished.widthMm)} × ${told.length(finished.knottedHeightMm)}`,
    withFringe:
      finished.heightWithFringeMm > finished.knottedHeightMm ? told.length(finished.heightWithFringeMm) : '',
    cords: told.count(materials.columns),
    rows: told.count(materials.rows),
    yarns: materials.yarns.length,
    knots: told.count(totals.knots),
    time: told.time(totals.seconds),
  };
  const skeinG = new Map(design.yarns.map((yarn) => [yarn.id, yarn.skeinG]));
  const needs = [
    ...materials.yarns.map(({ id, name, massG, cutMm, skeins }) =>
      words.yarn(name, enough.yarnLength(cutMm), enough.mass(massG), skeins, told.mass(skeinG.get(id) ?? 0)),
    ),
    words.cord(told.thickness(cords.diameterMm), enough.yarnLength(cords.totalMm)),
    words.dowel(told.thickness(dowel.diameterMm), enough.length(dowel.minLengthMm)),
    words.tools,
  ];
  const texts = { design, materials, units, copy: { language } };
  const skill = textOf(texts, 'skill');
  const terms = textOf(texts, 'terms');
  // The first version of a welcome says what the first paragraph has said already.
  const welcome = design.pattern?.texts?.welcome?.trim() ?? '';
  const inside = chosenParts(design).flatMap((part) =>
    part === 'welcome' && !terms ? words.welcomeAlone : (words.inside[part] ?? []),
  );
  return [
    words.heading(design.title),
    [words.paragraph(figures), design.designer && words.designedBy(design.designer)]
      .filter(Boolean)
      .join(' '),
    welcome,
    words.download,
    listed(words.heads.inside, inside),
    `${listed(words.heads.needs, needs)}\n${words.skeins(told.number(materials.tying.margin * 100))}`,
    listed(words.heads.figures, [
      ...words.figures(figures, told.count(totals.pieces), told.count(totals.looseEnds)),
      gaugeWords(words, gauge.basis.size.from),
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

function gaugeWords(words: (typeof listingWords)[Language], from: GaugeBasis['from']): string {
  if (from === 'swatches') return words.measured;
  return from === 'told' ? words.told : words.estimated;
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
