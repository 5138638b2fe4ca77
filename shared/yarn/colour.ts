/**
 * Colours as numbers. A yarn's colour is `#rrggbb` in sRGB; light adds up in linear RGB; likeness is judged in OKLab.
 * The arithmetic is culori's, used through its functional half so that only these few colour spaces are bundled.
 * sRGB by IEC 61966-2-1; OKLab as published in 'A perceptual color space for image processing', 2020.
 */
import { useMode as addMode, converter, formatHex, modeLrgb, modeOklab, modeRgb, parseHex } from 'culori/fn';

/** Linear light: 0 is none, 1 is all that the screen gives. */
export interface LinearRgb {
  readonly r: number;
  readonly g: number;
  readonly b: number;
}

/** `l` from 0 (black) to 1 (white); `a` (green to red) and `b` (blue to yellow) within about 0.4 of 0. */
export interface OkLab {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

addMode(modeRgb);
const toLinear = addMode(modeLrgb);
const toOkLab = addMode(modeOklab);
const toRgb = converter('rgb');

/** Throws where the text is not `#rrggbb`. */
export function hexToLinear(hex: string): LinearRgb {
  const rgb = /^#[0-9a-f]{6}$/i.test(hex) ? parseHex(hex) : undefined;
  if (!rgb) throw new Error(`${hex} is not a colour written as #rrggbb`);
  const { r, g, b } = toLinear(rgb);
  return { r, g, b };
}

/** The nearest `#rrggbb`, in lower case; light outside 0 to 1 is clipped channel by channel. */
export function linearToHex({ r, g, b }: LinearRgb): string {
  return formatHex(toRgb({ mode: 'lrgb', r, g, b }));
}

export function linearToOkLab({ r, g, b }: LinearRgb): OkLab {
  const lab = toOkLab({ mode: 'lrgb', r, g, b });
  return { l: lab.l, a: lab.a, b: lab.b };
}

/** May lie outside 0 to 1 where a screen can't show the colour. */
function okLabToLinear({ l, a, b }: OkLab): LinearRgb {
  const linear = toLinear({ mode: 'oklab', l, a, b });
  return { r: linear.r, g: linear.g, b: linear.b };
}

export function hexToOkLab(hex: string): OkLab {
  return linearToOkLab(hexToLinear(hex));
}

export function okLabToHex(colour: OkLab): string {
  return linearToHex(okLabToLinear(colour));
}
