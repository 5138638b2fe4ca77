/**
 * How a colour looks to people who lack one of the three kinds of cones: G. M. Machado, M. M. Oliveira and
 * L. A. F. Fernandes, 'A Physiologically-based Model for Simulation of Color Vision Deficiency', 2009, DOI
 * 10.1109/TVCG.2009.113. The matrices are those of severity 1, the most there is, and belong to linear light.
 *
 * culori has these matrices too, but multiplies the encoded sRGB values with them (4.0.2), which makes dark colours too
 * much alike; so they are applied here.
 */
import { hexToLinear, linearToHex } from './colour.ts';

/** Without the cones for long (protan), middle (deutan) or short (tritan) waves. */
export type Deficiency = 'protan' | 'deutan' | 'tritan';

type Row = readonly [r: number, g: number, b: number];

const matrices: Record<Deficiency, readonly [Row, Row, Row]> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** The colour that shows people of normal sight what one with the deficiency sees; both as `#rrggbb`. */
export function seenWith(deficiency: Deficiency, hex: string): string {
  const { r, g, b } = hexToLinear(hex);
  const light = ([fromR, fromG, fromB]: Row) => fromR * r + fromG * g + fromB * b;
  const [red, green, blue] = matrices[deficiency];
  return linearToHex({ r: light(red), g: light(green), b: light(blue) });
}
