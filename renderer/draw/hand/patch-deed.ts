/**
 * Patch: pressed outside the chosen cells it chooses others, pressed inside it takes them up and moves them. With Shift
 * it adds to what is chosen, with Alt it takes away; with the platform's copying key it moves a copy.
 */
import { cutMasks, joinMasks } from '../../../shared/chart/patch/combine-masks.ts';
import { isChosen, type Mask } from '../../../shared/chart/patch/mask.ts';
import { maskOfRectangle, maskOfTouching } from '../../../shared/chart/patch/mask-of-cells.ts';
import { maskOfFreehand } from '../../../shared/chart/patch/mask-of-freehand.ts';
import { type Cell, isInside } from '../../../shared/chart/tools/cell.ts';
import { lineCells } from '../../../shared/chart/tools/line-cells.ts';
import { layerOf } from '../../../shared/design/design.ts';
import { tellProblem } from '../../shell/notices.tsx';
import { endStroke } from '../../store/changing.ts';
import type { Lifted } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';
import type { Held } from '../../surface/gestures.ts';
import type { Deed, Means } from './deed.ts';
import { dropLifted, liftedNow, liftPatch, moveLifted, putBack } from './lifting.ts';
import { whyNotDraw } from './why-not-draw.ts';

/** What a press of the tool is doing. */
type Doing =
  | {
      readonly kind: 'choose';
      /** What is added to or taken from. */
      readonly before: Mask | null;
      /** What was chosen when it was pressed. */
      readonly was: Mask | null;
      readonly way: Cell[];
      readonly held: Held;
    }
  | {
      readonly kind: 'move';
      from: Cell;
      isLifted: boolean;
      /** What was in the air when it was pressed, and where. */
      readonly was: Lifted | null;
      readonly held: Held;
    };

let doing: Doing | null = null;

export const patchDeed: Deed = {
  label: 'Patch',
  draws: false,
  own: {
    begin(means, cell, held) {
      const { patch } = studio.getState();
      if (patch && isChosen(patch.mask, cell) && !held.shift && !held.alt) {
        const was = held.copy ? null : liftedNow();
        doing = { kind: 'move', from: cell, isLifted: was !== null, was, held };
        return;
      }
      endStroke();
      const keeps = held.shift || held.alt;
      const was = patch?.mask ?? null;
      doing = { kind: 'choose', before: keeps ? was : null, was, way: [cell], held };
      choose(means);
    },

    move(means, cell) {
      if (doing?.kind === 'choose') {
        doing.way.push(...lineCells(doing.way.at(-1)!, cell).slice(1));
        choose(means);
      } else if (doing?.kind === 'move') {
        if (!doing.isLifted && !lift(means, doing.held)) {
          doing = null;
          return;
        }
        doing.isLifted = true;
        moveLifted(cell.row - doing.from.row, cell.column - doing.from.column);
        doing.from = cell;
      }
    },

    end({ open }, cell) {
      // A press inside the patch that moves nothing lets go of it, outside it chooses one cell: both as a person expects.
      if (doing?.kind === 'choose' && doing.way.length === 1 && !isInside(cell, open.design) && !doing.before)
        studio.setState({ patch: null });
      if (studio.getState().patch?.mask.bounds === null) studio.setState({ patch: null });
      doing = null;
    },

    drop() {
      // Only this press is taken back, not what was in the air before it.
      if (doing?.kind === 'choose')
        studio.setState({ patch: doing.was && { mask: doing.was, lifted: null } });
      else if (doing?.was) putBack(doing.was);
      else if (doing?.isLifted) dropLifted();
      doing = null;
    },
  },
  hasTwoEnds: ({ patchBy }) => patchBy !== 'yarn',
};

function choose({ open, drawing }: Means): void {
  if (doing?.kind !== 'choose') return;
  const { way, before, held } = doing;
  const first = way[0]!;
  const last = way.at(-1)!;
  const masks: Record<typeof drawing.patchBy, () => Mask> = {
    rectangle: () => maskOfRectangle(first, last, open.design),
    freehand: () => maskOfFreehand(way, open.design),
    yarn: () => maskOfTouching(open.chart, last),
  };
  const mask = masks[drawing.patchBy]();
  const joined = before ? (held.alt ? cutMasks(before, mask) : joinMasks(before, mask)) : mask;
  studio.setState({ patch: { mask: joined, lifted: null } });
}

/** Takes up the patch for moving; false, with a sentence, where that can't be done. */
function lift({ open }: Means, held: Held): boolean {
  const fault = whyNotDraw(open);
  if (fault) {
    tellProblem(fault);
    return false;
  }
  endStroke();
  if (liftPatch(held.copy ? 'Copy a patch' : 'Move a patch', held.copy)) return true;
  tellProblem(
    `Nothing of the patch lies on “${layerOf(open.design, open.layer).name}”. Choose the layer that holds it.`,
  );
  return false;
}
