/**
 * Lighter and darker tones of a yarn for drawings of yarn and cord. Mixed in sRGB, which is close enough for shading;
 * colours that are compared or averaged go through `shared/yarn/colour`.
 */

/** `share` of `to`, the rest `from`; colours as #rrggbb. */
export function mixed(from: string, to: string, share: number): string {
  const a = Number.parseInt(from.slice(1), 16);
  const b = Number.parseInt(to.slice(1), 16);
  const channel = (shift: number) =>
    Math.round(((a >> shift) & 255) * (1 - share) + ((b >> shift) & 255) * share);
  return `#${((channel(16) << 16) | (channel(8) << 8) | channel(0)).toString(16).padStart(6, '0')}`;
}

export function darker(color: string, share: number): string {
  return mixed(color, '#1a120b', share);
}

export function lighter(color: string, share: number): string {
  return mixed(color, '#ffffff', share);
}
