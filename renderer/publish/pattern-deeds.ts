/** What is changed on the Publish screen: how the pattern is composed. Each is one step of the history. */
import type { Design } from '../../shared/design/design.ts';
import { type PatternPart, patternParts } from '../../shared/design/pattern-schema.ts';
import type { CopySettings, PatternSettings } from '../../shared/design/schema.ts';
import { chosenParts } from '../../shared/pattern/chosen-parts.ts';
import { parts } from '../../shared/pattern/parts.ts';
import { change } from '../store/changing.ts';
import { studio } from '../store/studio.ts';
import { partNames } from './parts/part-words.ts';

/** What the parts hang on: pieces that are cut to measure want a cut list. */
type Composed = Pick<Design, 'pattern' | 'bundles'>;

/** The parts that are printed, in their order. */
export function partsPrinted(design: Composed | undefined): readonly PatternPart[] {
  return chosenParts(design ?? {});
}

/** The parts that can be printed and are not, in their usual order. */
export function partsLeftOut(design: Composed | undefined): readonly PatternPart[] {
  const printed = partsPrinted(design);
  return patternParts.filter((part) => parts[part] && !printed.includes(part));
}

/** One that is printed anew stands where it usually does: behind the last part that usually comes before it. */
export function printPart(part: PatternPart, isPrinted: boolean): void {
  const printed = partsPrinted(studio.getState().open?.design);
  if (isPrinted === printed.includes(part)) return;
  if (!isPrinted) {
    setParts(
      `Leave out ${partNames[part]}`,
      printed.filter((each) => each !== part),
    );
    return;
  }
  const before = new Set(patternParts.slice(0, patternParts.indexOf(part)));
  const at = printed.findLastIndex((each) => before.has(each)) + 1;
  setParts(`Print ${partNames[part]}`, printed.toSpliced(at, 0, part));
}

/** `to` is the place among the parts printed that it has afterwards, from 0. */
export function movePart(part: PatternPart, to: number): void {
  const printed = partsPrinted(studio.getState().open?.design);
  const others = printed.filter((each) => each !== part);
  const place = Math.max(0, Math.min(others.length, to));
  if (others.length === printed.length || printed.indexOf(part) === place) return;
  setParts(`Move ${partNames[part]}`, others.toSpliced(place, 0, part));
}

export function usualParts(): void {
  const { parts: before, ...rest } = now() ?? {};
  if (before) setPattern('Print the usual parts', rest);
}

export function changeCopy<K extends keyof CopySettings>(
  label: string,
  key: K,
  value: CopySettings[K],
): void {
  const pattern = now();
  setPattern(label, { ...pattern, copy: { ...pattern?.copy, [key]: value } });
}

export type TextName = keyof NonNullable<PatternSettings['texts']>;

/** Undefined: the first version is printed again. */
export function writeText(name: TextName, text: string | undefined): void {
  const pattern = now();
  const { [name]: before, ...rest } = pattern?.texts ?? {};
  if (before === text) return;
  setPattern('Write a text of the pattern', {
    ...pattern,
    texts: text === undefined ? rest : { ...rest, [name]: text },
  });
}

export function setCover(cover: PatternSettings['cover']): void {
  const { cover: before, ...rest } = now() ?? {};
  if (!cover && !before) return;
  setPattern(cover ? 'Put a photograph on the cover' : 'Take the photograph off the cover', {
    ...rest,
    ...(cover && { cover }),
  });
}

/** What stands on the labels of the finished hanging; what is empty is not told. */
export function setLabels(labels: NonNullable<PatternSettings['labels']>): void {
  const { labels: before = {}, ...rest } = now() ?? {};
  const told = Object.fromEntries(Object.entries(labels).filter(([, text]) => text?.trim()));
  const keys = [...new Set([...Object.keys(before), ...Object.keys(told)])] as (keyof typeof labels)[];
  if (keys.every((key) => before[key] === told[key])) return;
  setPattern('Fibres on the labels', { ...rest, ...(Object.keys(told).length > 0 && { labels: told }) });
}

function setParts(label: string, list: readonly PatternPart[]): void {
  setPattern(label, { ...now(), parts: [...list] });
}

function setPattern(label: string, value: PatternSettings): void {
  change(label, { kind: 'set', field: 'pattern', value });
}

function now(): PatternSettings | undefined {
  return studio.getState().open?.design.pattern;
}
