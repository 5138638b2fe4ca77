/**
 * Light that is added up: what several cells, or the light and dark of one knot, send to the eye as one point. Bytes
 * of sRGB are no measure of light, so they are turned into linear light, added, and turned back (`shared/yarn/colour`
 * has the arithmetic; here it stands in tables, since pictures have millions of points).
 */
import { hexToLinear, linearToHex } from '../../shared/yarn/colour.ts';

/** Light of each byte of a channel, from 0 to 1. */
export const lightOfByte = Float32Array.from({ length: 256 }, (_, byte) => {
  const two = byte.toString(16).padStart(2, '0');
  return hexToLinear(`#${two}${two}${two}`).r;
});

/** Fine enough that no byte is missed: the darkest steps of sRGB are 1/3295 of full light apart. */
const steps = 8192;
const byteOfStep = Uint8Array.from({ length: steps + 1 }, (_, step) => {
  const light = step / steps;
  return Number.parseInt(linearToHex({ r: light, g: light, b: light }).slice(1, 3), 16);
});

/** The byte of a channel that gives this light, from 0 to 1. */
export function byteOfLight(light: number): number {
  return byteOfStep[Math.round(light * steps)]!;
}

/** Pixels of RGBA bytes as fewer ones, each with the mean light of the `by` x `by` pixels that it stands for. */
export function thinned(
  bytes: Uint8ClampedArray,
  width: number,
  height: number,
  by: number,
): Uint8ClampedArray {
  const across = width / by;
  const down = height / by;
  const thin = new Uint8ClampedArray(across * down * 4);
  for (let y = 0; y < down; y++) {
    for (let x = 0; x < across; x++) {
      const light = meanLight(bytes, width, { left: x * by, top: y * by, width: by, height: by });
      const to = (y * across + x) * 4;
      for (let channel = 0; channel < 3; channel++) thin[to + channel] = byteOfLight(light[channel]!);
      thin[to + 3] = 255;
    }
  }
  return thin;
}

/** Mean light of red, green and blue in a part of a picture of RGBA bytes that is `rowWidth` pixels wide. */
export function meanLight(
  bytes: Uint8ClampedArray,
  rowWidth: number,
  part: { readonly left: number; readonly top: number; readonly width: number; readonly height: number },
): [red: number, green: number, blue: number] {
  const sum: [number, number, number] = [0, 0, 0];
  for (let y = part.top; y < part.top + part.height; y++) {
    for (let x = part.left; x < part.left + part.width; x++) {
      const at = (y * rowWidth + x) * 4;
      sum[0] += lightOfByte[bytes[at]!]!;
      sum[1] += lightOfByte[bytes[at + 1]!]!;
      sum[2] += lightOfByte[bytes[at + 2]!]!;
    }
  }
  const count = part.width * part.height;
  return [sum[0] / count, sum[1] / count, sum[2] / count];
}
