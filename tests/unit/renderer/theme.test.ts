/** The colours of both themes, held to WCAG 2.2: text by success criterion 1.4.3, marks and borders by 1.4.11. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contrastRatio } from '../../../shared/yarn/colour-contrast.ts';

const styles = (path: string) => readFileSync(new URL(`../../../renderer/${path}`, import.meta.url), 'utf8');
const css = styles('shell/theme.css');
const drawCss = styles('draw/draw.css');

/** The variables that one rule of the theme sets to colours. */
function colorsOf(selector: string): Record<string, string> {
  const rule = css.split(`${selector} {`)[1]?.split('}')[0];
  if (rule === undefined) throw new Error(`the theme has no rule for ${selector}`);
  return Object.fromEntries(
    [...rule.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name, hex]) => [name, hex]),
  );
}

const surfaces = ['paper', 'linen', 'linen-deep'];
const textOn: readonly (readonly [text: string, ground: string])[] = [
  ...['ink', 'quiet', 'madder'].flatMap((text) => surfaces.map((ground) => [text, ground] as const)),
  ['on-madder', 'madder'],
  ['on-wood', 'wood'],
];
/** Borders of controls, and the ring around what has the focus. The line between panels is no mark. */
const marksOn: readonly (readonly [mark: string, ground: string])[] = [
  ...['control', 'ink', 'madder'].flatMap((mark) => surfaces.map((ground) => [mark, ground] as const)),
];

describe.each([
  ['light', ':root'],
  ['dark', ':root[data-theme="dark"]'],
])('in the %s theme', (_, selector) => {
  const colors = colorsOf(selector);
  const ratio = (a: string, b: string) => contrastRatio(colors[a]!, colors[b]!);

  it.each(textOn)('%s can be read on %s', (text, ground) => {
    expect(ratio(text, ground)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(marksOn)('%s can be seen on %s', (mark, ground) => {
    expect(ratio(mark, ground)).toBeGreaterThanOrEqual(3);
  });
});

describe('outlines on the chart', () => {
  it('are of two tones, so that one of them stands out on every yarn', () => {
    const rule = drawCss.split('.cell-outline {')[1]?.split('}')[0] ?? '';
    const [light, dark] = [...rule.matchAll(/#[0-9a-f]{6}/g)].map(([hex]) => hex);
    // The worst yarn lies between the tones; every grey is tried.
    for (let grey = 0; grey < 256; grey++) {
      const yarn = `#${grey.toString(16).padStart(2, '0').repeat(3)}`;
      expect(Math.max(contrastRatio(light!, yarn), contrastRatio(dark!, yarn))).toBeGreaterThanOrEqual(3);
    }
  });
});
