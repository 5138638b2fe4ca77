/** The writing of PDF operators: numbers as short as print allows, colours, paths, glyphs with their kerning. */
import type { BoxItem, PathStep } from '../../../shared/pattern/page/page.ts';

/** What one glyph takes, in 1/1000 em. `xAdvance` is with kerning, `advanceWidth` without. */
export interface GlyphPlace {
  xAdvance: number;
  advanceWidth: number;
  xOffset: number;
  yOffset: number;
}

/** Micrometres are finer than any printer. */
export function n(value: number): string {
  return String(Math.round(value * 1000) / 1000 || 0);
}

/** For what is added up over many cells. */
export function fine(value: number): string {
  return String(Math.round(value * 100_000) / 100_000 || 0);
}

/** For the points of paths and boxes: hundredths of a millimetre are 2540 to the inch. */
export function at(value: number): string {
  return String(Math.round(value * 100) / 100 || 0);
}

/** The operator that sets a colour, `rg` or `RG`, or that of a grey, which is shorter. */
export function colored(color: string, operator: 'rg' | 'RG'): string {
  const value = Number.parseInt(color.slice(1), 16);
  const [r, g, b] = [16, 8, 0].map((shift) => n(((value >> shift) & 255) / 255));
  return r === g && g === b ? `${r} ${operator === 'rg' ? 'g' : 'G'}` : `${r} ${g} ${b} ${operator}`;
}

export function pathStep(step: PathStep): string {
  switch (step[0]) {
    case 'M':
      return `${at(step[1])} ${at(step[2])} m`;
    case 'L':
      return `${at(step[1])} ${at(step[2])} l`;
    case 'C':
      return `${at(step[1])} ${at(step[2])} ${at(step[3])} ${at(step[4])} ${at(step[5])} ${at(step[6])} c`;
    case 'Z':
      return 'h';
  }
}

/** How far a curve's handles reach along a quarter circle of radius 1. */
const QUARTER = 0.5523;

export function roundedBox({ x, y, width, height, radius = 0 }: BoxItem): string {
  const r = Math.min(radius, width / 2, height / 2);
  const k = r * (1 - QUARTER);
  const right = x + width;
  const bottom = y + height;
  const steps: PathStep[] = [
    ['M', x + r, y],
    ['L', right - r, y],
    ['C', right - k, y, right, y + k, right, y + r],
    ['L', right, bottom - r],
    ['C', right, bottom - k, right - k, bottom, right - r, bottom],
    ['L', x + r, bottom],
    ['C', x + k, bottom, x, bottom - k, x, bottom - r],
    ['L', x, y + r],
    ['C', x, y + k, x + k, y, x + r, y],
    ['Z'],
  ];
  return steps.map(pathStep).join(' ');
}

/**
 * Glyphs with their kerning as one operator. Where a mark is raised above its letter, the line is broken into several
 * with a text rise (Ts) between them; where it is moved sideways, space is put before it and taken back after it.
 */
export function shown(hex: string[], places: GlyphPlace[], sizeMm: number): string {
  let line = '[';
  let word = '';
  let rise = 0;
  const close = () => {
    if (word) line += `<${word}>`;
    word = '';
  };
  places.forEach((place, i) => {
    if (place.yOffset !== rise) {
      close();
      rise = place.yOffset;
      line += `] TJ ${n((rise / 1000) * sizeMm)} Ts [`;
    }
    if (place.xOffset) {
      close();
      line += n(-place.xOffset);
    }
    word += hex[i];
    const after = place.xAdvance - place.advanceWidth - place.xOffset;
    if (Math.abs(after) > 0.5) {
      close();
      line += n(-after);
    }
  });
  close();
  return `${line}] TJ${rise === 0 ? '' : ' 0 Ts'}`;
}
