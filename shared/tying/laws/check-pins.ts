/** Whether a plan obeys the pins that it says it obeys, read from its stretches alone. */
import type { Pin } from '../../design/schema.ts';
import type { Plan, Stretch } from '../plan.ts';

/** One sentence for each pin that is not obeyed. The plan's stretches are sound. */
export function pinFaultsOf({ pins, strands }: Plan): string[] {
  const carries = strands.flatMap(({ pieces }) =>
    pieces.flatMap(({ stretches }) =>
      stretches.slice(1).map((to, i): Carry => ({ from: stretches[i]!, to })),
    ),
  );
  const ends = strands.map(({ pieces }) => pieces.at(-1)!.stretches.at(-1)!);
  return pins
    .filter((pin) => !isObeyed[pin.kind](pin, carries, ends))
    .map(({ kind, row, cord }) => `the pin '${kind}' at row ${row}, cord ${cord} is not obeyed`);
}

/** A turn is one too. */
interface Carry {
  readonly from: Stretch;
  readonly to: Stretch;
}

const isObeyed: Readonly<
  Record<Pin['kind'], (pin: Pin, carries: readonly Carry[], ends: readonly Stretch[]) => boolean>
> = {
  cut: ({ row, cord }, _, ends) => ends.some((end) => end.row === row && end.to === cord),
  'no-carry': (pin, carries) => !carries.some((carry) => passes(carry, pin)),
  carry: ({ row, cord, toRow, toCord }, carries) =>
    carries.some(
      ({ from, to }) => from.row === row && from.to === cord && to.row === toRow && to.from === toCord,
    ),
};

/** Down along the cord where it hangs, then behind the knots of its own row, neither of its ends among them. */
function passes({ from, to }: Carry, { row, cord }: Pin): boolean {
  if (row === to.row) {
    const isEnd = cord === to.from || (from.row === to.row && cord === from.to);
    return !isEnd && cord >= Math.min(from.to, to.from) && cord <= Math.max(from.to, to.from);
  }
  return cord === from.to && row > from.row && row < to.row;
}
