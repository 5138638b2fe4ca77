/** In which units figures are shown. Inside, lengths are mm and masses g; only this folder rounds. */
export type Units = 'metric' | 'us' | 'both';

/**
 * 'enough' rounds up, for what is bought or cut: a figure that is followed to the letter must never fall short. 'spare'
 * rounds down, for what is left over, free or saved: nobody shall count on more than there is. Else to the nearest step.
 */
export interface Rounding {
  readonly enough?: boolean;
  readonly spare?: boolean;
}

/** The figure in the units asked for; in both, the metric one leads: '34.5 cm (13 1/2 in)'. */
export function inUnits(units: Units, metric: () => string, us: () => string): string {
  switch (units) {
    case 'metric':
      return metric();
    case 'us':
      return us();
    case 'both':
      return `${metric()} (${us()})`;
  }
}
