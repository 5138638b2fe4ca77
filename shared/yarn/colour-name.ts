/**
 * Plain names for colours that nobody has named yet: 'Light blue', 'Dark greyish green', 'Brown'. They come from
 * lightness, chroma and hue in OKLCh. The borders are our own, drawn by eye: values from memory.
 */
import { hexToOkLab } from './colour.ts';

/** Below this chroma a colour is called grey; below the next one greyish. */
const GREY_CHROMA = 0.02;
const GREYISH_CHROMA = 0.04;

const greys = [
  { lightnessBelow: 0.2, name: 'black' },
  { lightnessBelow: 0.45, name: 'dark grey' },
  { lightnessBelow: 0.7, name: 'grey' },
  { lightnessBelow: 0.93, name: 'light grey' },
  { lightnessBelow: Number.POSITIVE_INFINITY, name: 'white' },
] as const;

interface Look {
  /** From this hue, in degrees, to the next one. */
  hue: readonly [number, number];
  /** Only where the chroma is below, or the lightness from or below. */
  chromaBelow?: number;
  lightnessFrom?: number;
  lightnessBelow?: number;
  name: string;
  /** Lightness where 'dark' and 'light' begin: yellow is light by itself, blue is dark. */
  darkBelow: number;
  lightFrom: number;
}

/** The first that fits gives the name. Pale oranges are cream, dull or dark ones are brown. */
const looks: readonly Look[] = [
  { hue: [38, 120], chromaBelow: 0.06, lightnessFrom: 0.86, name: 'cream', darkBelow: 0, lightFrom: 2 },
  { hue: [38, 98], chromaBelow: 0.09, name: 'brown', darkBelow: 0.36, lightFrom: 0.68 },
  { hue: [38, 98], lightnessBelow: 0.63, name: 'brown', darkBelow: 0.36, lightFrom: 0.68 },
  { hue: [0, 12], name: 'rose', darkBelow: 0.45, lightFrom: 0.75 },
  { hue: [12, 38], name: 'red', darkBelow: 0.42, lightFrom: 0.72 },
  { hue: [38, 75], name: 'orange', darkBelow: 0, lightFrom: 0.82 },
  { hue: [75, 98], name: 'gold', darkBelow: 0, lightFrom: 0.92 },
  { hue: [98, 120], name: 'yellow', darkBelow: 0.68, lightFrom: 0.975 },
  { hue: [120, 165], name: 'green', darkBelow: 0.45, lightFrom: 0.78 },
  { hue: [165, 215], name: 'teal', darkBelow: 0.45, lightFrom: 0.8 },
  { hue: [215, 280], name: 'blue', darkBelow: 0.4, lightFrom: 0.7 },
  { hue: [280, 315], name: 'violet', darkBelow: 0.4, lightFrom: 0.7 },
  { hue: [315, 345], name: 'purple', darkBelow: 0.45, lightFrom: 0.75 },
  { hue: [345, 360], name: 'rose', darkBelow: 0.45, lightFrom: 0.75 },
];

/** A plain name for a colour written as `#rrggbb`, with a capital first. */
export function colourName(hex: string): string {
  const { l, a, b } = hexToOkLab(hex);
  const chroma = Math.hypot(a, b);
  if (chroma < GREY_CHROMA) return capital(greys.find((grey) => l < grey.lightnessBelow)!.name);
  const degree = ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360;
  const look = looks.find((each) => fits(each, l, chroma, degree))!;
  const lightness = l < look.darkBelow ? 'dark ' : l >= look.lightFrom ? 'light ' : '';
  const greyish = chroma < GREYISH_CHROMA && look.name !== 'cream' ? 'greyish ' : '';
  return capital(`${lightness}${greyish}${look.name}`);
}

/** A plain name for a colour that is none of those taken: the second 'Dark red' is 'Dark red 2'. */
export function colourNameBeside(hex: string, taken: readonly string[]): string {
  const name = colourName(hex);
  if (!taken.includes(name)) return name;
  let count = 2;
  while (taken.includes(`${name} ${count}`)) count++;
  return `${name} ${count}`;
}

/** Names for a list of colours, no two alike. */
export function colourNames(hexes: readonly string[]): string[] {
  const names: string[] = [];
  for (const hex of hexes) names.push(colourNameBeside(hex, names));
  return names;
}

function fits(look: Look, lightness: number, chroma: number, degree: number): boolean {
  return (
    degree >= look.hue[0] &&
    degree < look.hue[1] &&
    chroma < (look.chromaBelow ?? Number.POSITIVE_INFINITY) &&
    lightness >= (look.lightnessFrom ?? 0) &&
    lightness < (look.lightnessBelow ?? Number.POSITIVE_INFINITY)
  );
}

function capital(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}
