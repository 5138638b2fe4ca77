/** Steps of the scale beyond none: as many as can be told apart. */
const mostSteps = 5;

/** Whole counts from 0 to `most`, both among them, spread as evenly as whole ones can be. `most` is 1 at least. */
export function heatSteps(most: number): number[] {
  const steps = Math.min(most, mostSteps);
  return Array.from({ length: steps + 1 }, (_, i) => Math.round((i * most) / steps));
}
