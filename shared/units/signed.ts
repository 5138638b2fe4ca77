/** '+4', '−1.2 m', 'same': by how much a figure differs from another. `shown` writes the size of it. */
export function signed(by: number, shown: (size: number) => string): string {
  const size = shown(Math.abs(by));
  // What the noise of binary fractions leaves is nothing.
  if (size === shown(0)) return 'same';
  return `${by > 0 ? '+' : '−'}${size}`;
}
