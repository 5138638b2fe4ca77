/**
 * Colours that go with a colour, found in OKLCh: lightness, chroma and hue as the eye orders them, so that a lighter
 * yarn keeps its hue. What a screen can't show loses chroma until it can; lightness and hue stay. All colours are
 * `#rrggbb`. The size of the steps is our own, chosen by eye: values from memory.
 */
import { useMode as addMode, clampChroma, converter, formatHex, modeOklab, modeOklch } from 'culori/fn';
import { hexToOkLab } from './colour.ts';

/** Of 1 from black to white: about a dozen steps, each clearly seen between yarns side by side. */
const LIGHTNESS_STEP = 0.08;
/** What is left of the chroma where a colour is made softer. */
const SOFTER_SHARE = 0.6;
/** Below this chroma a colour has no hue worth turning: three channels of 8 bits that differ by a step or two. */
const NO_CHROMA = 0.004;
/** Half of one step of a channel of 8 bits. */
const HALF_A_STEP = 0.5 / 255;

addMode(modeOklab);
addMode(modeOklch);
const toRgb = converter('rgb');

/** A step lighter; white stays white. */
export function lighter(hex: string): string {
  const { l, c, h } = oklchOf(hex);
  return hexOf(Math.min(1, l + LIGHTNESS_STEP), c, h);
}

/** A step darker; black stays black. */
export function darker(hex: string): string {
  const { l, c, h } = oklchOf(hex);
  return hexOf(Math.max(0, l - LIGHTNESS_STEP), c, h);
}

/** Nearer to grey, as light as before; greys stay as they are. */
export function softer(hex: string): string {
  const { l, c, h } = oklchOf(hex);
  return c < NO_CHROMA ? hex : hexOf(l, c * SOFTER_SHARE, h);
}

/** The opposite hue, as light and as strong as far as a screen can show it; greys have none and stay as they are. */
export function complementary(hex: string): string {
  const { l, c, h } = oklchOf(hex);
  return c < NO_CHROMA ? hex : hexOf(l, c, (h + 180) % 360);
}

/** `share` (0 to 1) of the way from `a` to `b`, in OKLab: halfway between two yarns lies the one that blends them. */
export function between(a: string, b: string, share: number): string {
  const [from, to] = [hexToOkLab(a), hexToOkLab(b)];
  const mix = (one: number, other: number) => one + (other - one) * share;
  return displayable({ mode: 'oklab', l: mix(from.l, to.l), a: mix(from.a, to.a), b: mix(from.b, to.b) });
}

/** Lightness 0 to 1, chroma from 0 to about 0.4, hue in degrees. */
function oklchOf(hex: string): { l: number; c: number; h: number } {
  const { l, a, b } = hexToOkLab(hex);
  return { l, c: Math.hypot(a, b), h: ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360 };
}

/** White and black have no chroma. */
function hexOf(l: number, c: number, h: number): string {
  return displayable({ mode: 'oklch', l, c: l > 0 && l < 1 ? c : 0, h });
}

type Wanted =
  | { mode: 'oklab'; l: number; a: number; b: number }
  | { mode: 'oklch'; l: number; c: number; h: number };

function displayable(wanted: Wanted): string {
  const { r, g, b } = toRgb(wanted);
  const beyond = Math.max(r, g, b) - 1;
  const below = -Math.min(r, g, b);
  // What rounds to 8 bits in any case is left to rounding, so that a colour which is displayable comes back unchanged.
  const shown = Math.max(beyond, below) < HALF_A_STEP;
  return formatHex(shown ? { mode: 'rgb', r, g, b } : toRgb(clampChroma(wanted, 'oklch')));
}
