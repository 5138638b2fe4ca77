import type { CommandId } from '../../shared/commands.ts';
import type { PatternPart } from '../../shared/design/pattern-schema.ts';
import { type Copy, copyOf } from '../../shared/pattern/copy.ts';
import { tell } from '../shell/notices.tsx';
import { studio } from '../store/studio.ts';
import { choosePhotograph } from './cover/choose-photograph.ts';
import { publishNext } from './editions/edition-deeds.tsx';
import type { PatternKeeper } from './keep-pattern.ts';
import { changeCopy, movePart, partsPrinted, printPart, setCover, usualParts } from './pattern-deeds.ts';
import { patternView } from './pattern-view.ts';

/** What the Publish screen carries out while it is shown. */
export function publishCommands(keeper: PatternKeeper) {
  return {
    'part-up': () => withChosen((part, at) => movePart(part, at - 1)),
    'part-down': () => withChosen((part, at) => movePart(part, at + 1)),
    'leave-out-part': () => withChosen((part) => printPart(part, false)),
    'usual-parts': usualParts,
    'large-print': () =>
      withCopy(({ cells }) => changeCopy('Cells', 'cells', cells === 'large' ? 'standard' : 'large')),
    'rows-beside': () =>
      withCopy(({ rowsBeside }) => changeCopy('Rows written beside the chart', 'rowsBeside', !rowsBeside)),
    'left-hand': () =>
      withCopy(({ leftHanded }) => changeCopy('For the left hand', 'leftHanded', !leftHanded)),
    'cover-photograph': choosePhotograph,
    'cover-drawn': () => setCover(undefined),
    'publish-edition': publishNext,
    'full-pages': keeper.again,
    'stop-pages': keeper.stop,
  } satisfies Partial<Record<CommandId, () => void>>;
}

/** `at` is its place among the parts that are printed, from 0. */
function withChosen(act: (part: PatternPart, at: number) => void): void {
  const { chosen } = patternView.getState();
  const at = chosen ? partsPrinted(studio.getState().open?.design).indexOf(chosen) : -1;
  if (chosen === null || at < 0) tell('Choose a part that is printed first: press its name in the list.');
  else act(chosen, at);
}

function withCopy(act: (copy: Copy) => void): void {
  const { open } = studio.getState();
  if (open) act(copyOf(open.design));
}
