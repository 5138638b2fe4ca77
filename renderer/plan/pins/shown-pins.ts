/** The design's pins with what the plan that is shown says of them. */
import type { Pin } from '../../../shared/design/schema.ts';
import type { Planned } from '../plans/planned.ts';

export interface ShownPin {
  readonly pin: Pin;
  /** Its own among the design's pins. */
  readonly key: string;
  /** Why the plan does not obey it, and what to do; empty where it does, and where that is not known yet. */
  readonly fault: string;
}

/** In the order of the design's list. */
export function shownPins(
  pins: readonly Pin[] | undefined,
  planned: Pick<Planned, 'pinFaults'> | null,
): readonly ShownPin[] {
  const faults = new Map(planned?.pinFaults.map(({ pin, sentence }) => [keyOf(pin), sentence]));
  return (pins ?? []).map((pin) => ({ pin, key: keyOf(pin), fault: faults.get(keyOf(pin)) ?? '' }));
}

/** The same for pins that decide the same, wherever they come from. */
export function keyOf({ kind, row, cord, toRow, toCord }: Pin): string {
  return [kind, row, cord, toRow, toCord].join(' ');
}
