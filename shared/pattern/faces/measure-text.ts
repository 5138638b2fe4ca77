/**
 * How much room text takes, computed from the faces' own advances, kerning and ligatures, so that pages can be laid out
 * without a screen or a font file, and stand as they are drawn.
 *
 * Text is measured in Unicode's composed form (NFC); what these functions give back is in that form too. A combining
 * mark that has no composed form stands over its letter and takes no room.
 */
import type { Face } from '../page/page.ts';
import { type FaceMeasures, faceMeasures } from './face-measures.ts';

const ELLIPSIS = '…';

/** Width in mm of one line of text, set with an em of `sizeMm`. */
export function textWidthMm(text: string, face: Face, sizeMm: number): number {
  return (widthOf(text.normalize('NFC'), faceMeasures(face)) * sizeMm) / 1000;
}

/** The characters that the face lacks, each once, in the order of the text. Line breaks and tabs are not counted. */
export function missingCharacters(text: string, face: Face): string[] {
  const { advances } = faceMeasures(face);
  const lacking = [...text.normalize('NFC')].filter(
    (character) => !advances.has(character.codePointAt(0)!) && !/[\n\r\t]/.test(character),
  );
  return [...new Set(lacking)];
}

/**
 * Text broken into lines no wider than `widthMm`: after spaces, after hyphens, dashes and slashes that do not stand
 * between figures, and inside a word only where it is too long for a line of its own. Line breaks of the text are
 * kept. A line holds at least one character, however narrow it is.
 */
export function wrapText(text: string, face: Face, sizeMm: number, widthMm: number): string[] {
  const measures = faceMeasures(face);
  const room = roomIn(widthMm, sizeMm);
  return text
    .normalize('NFC')
    .split(/\r\n|\r|\n/)
    .flatMap((paragraph) => wrapParagraph(paragraph, measures, room));
}

/** Width in mm of the widest piece of the text that `wrapText` keeps on one line, if the line is wide enough for it. */
export function widestPieceMm(text: string, face: Face, sizeMm: number): number {
  return Math.max(...wordsOf(text.normalize('NFC')).map((word) => textWidthMm(word.trimEnd(), face, sizeMm)));
}

/**
 * For each line of `wrapText`, whether it goes on in the middle of a word that the line before begins: after a hyphen, or
 * where the word was too long for a line. A reader puts no space there.
 */
export function joinedLines(text: string, lines: readonly string[]): boolean[] {
  const composed = text.normalize('NFC');
  let end = 0;
  return lines.map((line, i) => {
    const from = composed.indexOf(line, end);
    const joined = i > 0 && line !== '' && lines[i - 1] !== '' && from === end;
    end = from + line.length;
    return joined;
  });
}

/** The text where it fits; else as much of its start as fits with an ellipsis; nothing where not even that fits. */
export function fitText(text: string, face: Face, sizeMm: number, widthMm: number): string {
  const measures = faceMeasures(face);
  const room = roomIn(widthMm, sizeMm);
  const composed = text.normalize('NFC');
  if (widthOf(composed, measures) <= room) return composed;
  if (widthOf(ELLIPSIS, measures) > room) return '';
  let kept = '';
  for (const letter of lettersOf(composed)) {
    if (widthOf(kept + letter + ELLIPSIS, measures) > room) break;
    kept += letter;
  }
  return kept.trimEnd() + ELLIPSIS;
}

/** In thousandths of the em. A hair is added, so that text fits into exactly its own width. */
function roomIn(widthMm: number, sizeMm: number): number {
  return (widthMm / sizeMm) * 1000 + 1e-6;
}

function widthOf(composed: string, measures: FaceMeasures): number {
  const { advances, missing, kern, ligatures } = measures;
  let width = 0;
  let before = -1;
  for (const character of composed) {
    const code = character.codePointAt(0)!;
    width += (advances.get(code) ?? missing) + kern(before, code);
    before = code;
  }
  if (ligatures.size === 0 || !composed.includes('f')) return width;
  for (const [letters] of composed.matchAll(LIGATURE)) width += savedBy(letters, measures);
  return width;
}

/** The ligatures that a face may have: `build/faces/measure.ts` asks for these. */
const LIGATURE = /ff[il]?|f[il]/g;

/** What letters take as one, beyond what they take side by side. */
function savedBy(letters: string, { advances, missing, kern, ligatures }: FaceMeasures): number {
  const drawn = ligatures.get(letters);
  if (drawn === undefined) return 0;
  const codes = [...letters].map((letter) => letter.codePointAt(0)!);
  const apart = codes.map((code, i) => (advances.get(code) ?? missing) + kern(codes[i - 1] ?? -1, code));
  return drawn - apart.reduce((sum, each) => sum + each, 0);
}

function wrapParagraph(paragraph: string, measures: FaceMeasures, room: number): string[] {
  const lines: string[] = [];
  let line = '';
  let used = 0;
  const finish = () => {
    lines.push(line.trimEnd());
    line = '';
    used = 0;
  };
  for (const word of wordsOf(paragraph)) {
    const seen = word.trimEnd();
    used += kernBetween(line, word, measures);
    if (line !== '' && used + widthOf(seen, measures) > room) finish();
    if (line === '' && widthOf(seen, measures) > room) {
      for (const letter of lettersOf(word)) {
        const longer = widthOf(line + letter, measures);
        if (line !== '' && letter.trim() !== '' && longer > room) finish();
        line += letter;
        used = widthOf(line, measures);
      }
      continue;
    }
    line += word;
    used += widthOf(word, measures);
  }
  finish();
  return lines;
}

/** What is added where `after` goes on behind `before`. */
function kernBetween(before: string, after: string, { kern }: FaceMeasures): number {
  return before === '' ? 0 : kern(before.codePointAt(before.length - 1)!, after.codePointAt(0) ?? -1);
}

/** What stays with the figure before it. */
const UNITS = String.raw`\d+\/\d+|[cm]?m|in|Zoll|yd|k?g|oz|lb|h|Std\.|min|Min\.|%`;

/** Where a space does not end a line: before what is named, behind what is named. */
const HELD = [
  // A figure and its unit or fraction.
  String.raw`(?<=[\d/]\s)(?:${UNITS})(?![\p{L}\p{N}])`,
  // Hours and minutes, pounds and ounces.
  String.raw`(?<=\d (?:h|Std\.|lb) )\d+ (?:min|Min\.|oz)`,
  // A sign before its figure, and both sides of one that a line does not begin or end with.
  String.raw`[×±](?:\s|$)`,
  String.raw`(?<=(?:^|[\s(])±\s|\d\s×\s)\d`,
];

/** A space, but none that forbids a break and none that is held; or a hyphen, dash or slash after a letter. */
const BREAK = new RegExp(
  String.raw`(?<=[^\S\u00a0\u2007\u202f])(?=\S)(?!${HELD.join('|')})|(?<=[^\s\d][-\u2010\u2013\u2014/])(?=[^\s\d])`,
  'u',
);

/** Pieces between which a line may end; each keeps its own trailing spaces. */
function wordsOf(paragraph: string): string[] {
  return paragraph.split(BREAK);
}

/** Characters with the marks that stand on them. */
function lettersOf(text: string): string[] {
  return text.match(/\P{M}\p{M}*|\p{M}+/gsu) ?? [];
}
