/** By a plain weight of the parts of a colour (#rrggbb): enough to choose between two tints. */
export function isLight(color: string): boolean {
  const rgb = Number.parseInt(color.slice(1), 16);
  return 0.3 * (rgb >> 16) + 0.59 * ((rgb >> 8) & 255) + 0.11 * (rgb & 255) > 128;
}
