/**
 * The accent of a pattern: the one colour of its rules, marks and numbers, taken from the hanging's own yarns. It is found
 * by computation: the yarn that is strongest in colour and has a share of the picture, but not the ground, and as dark as it
 * must be to be read on paper.
 */
import type { Design } from '../design/design.ts';
import { hexToOkLab, okLabToHex } from '../yarn/colour.ts';
import { contrastRatio } from '../yarn/colour-contrast.ts';
import type { Imprint } from './imprint.ts';
import { inks } from './page/style.ts';

/** What text needs on paper: WCAG 2.2, success criterion 1.4.3. */
const READABLE = 4.5;

/** Below this chroma in OKLCh a yarn is a grey or a linen, which says nothing as an accent: value from trying it. */
const COLOURFUL = 0.04;

/** How dark a colour is made at each try, as a share of its lightness and chroma. */
const STEP = 0.98;

interface AccentInput {
  readonly design: Pick<Design, 'yarns' | 'ground'>;
  /** How many knots of each yarn there are. */
  readonly materials: { readonly yarns: readonly { readonly id: string; readonly knots: number }[] };
  readonly imprint: Pick<Imprint, 'accent'>;
}

/** As #rrggbb, of at least 4.5 to 1 on paper. The imprint's own accent wins, made darker where it can't be read. */
export function accentOf({ design, materials, imprint }: AccentInput): string {
  if (imprint.accent) return readable(imprint.accent);
  const knots = new Map(materials.yarns.map(({ id, knots }) => [id, knots]));
  const all = [...knots.values()].reduce((sum, each) => sum + each, 0);
  const colourful = design.yarns
    .map(({ id, color }) => ({ id, color, share: (knots.get(id) ?? 0) / Math.max(all, 1) }))
    .map((yarn) => ({ ...yarn, chroma: chromaOf(yarn.color) }))
    .filter(({ share, chroma }) => share > 0 && chroma >= COLOURFUL);
  const others = colourful.filter(({ id }) => id !== design.ground);
  const chosen = strongest(others) ?? strongest(colourful);
  return chosen ? readable(chosen.color) : inks.text;
}

/** A few knots of a strong colour are seen well: the share counts by its square root. Of equals the first. */
function strongest<Y extends { chroma: number; share: number }>(yarns: readonly Y[]): Y | undefined {
  const weight = ({ chroma, share }: Y) => chroma * Math.sqrt(share);
  return yarns.reduce<Y | undefined>(
    (best, yarn) => (best && weight(best) >= weight(yarn) ? best : yarn),
    undefined,
  );
}

function chromaOf(color: string): number {
  const { a, b } = hexToOkLab(color);
  return Math.hypot(a, b);
}

/** Lightness and chroma shrink together, so that the hue stays. */
function readable(color: string): string {
  const { l, a, b } = hexToOkLab(color);
  for (let share = 1; share > 0; share *= STEP) {
    const tried = share === 1 ? color : okLabToHex({ l: l * share, a: a * share, b: b * share });
    if (contrastRatio(tried, inks.paper) >= READABLE) return tried;
  }
  return inks.text;
}
