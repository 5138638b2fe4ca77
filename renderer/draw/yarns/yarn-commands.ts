/** The commands that are about yarns. */
import type { CommandId } from '../../../shared/commands.ts';
import { showSidePart } from '../show-side-part.ts';
import { makeYarnsThatGo } from './harmony-sheet.tsx';
import { recolourDesign } from './recolour-sheet.tsx';
import { openStash } from './stash/stash-dialog.tsx';
import {
  addAYarn,
  changeChosenYarn,
  makeChosenYarnGround,
  mergeChosenYarn,
  moveChosenYarn,
  removeChosenYarn,
  replaceChosenYarn,
  stepYarn,
} from './yarn-deeds.ts';

export const yarnCommands = {
  'next-yarn': () => stepYarn(1),
  'previous-yarn': () => stepYarn(-1),
  'add-yarn': addAYarn,
  'change-yarn': changeChosenYarn,
  'yarn-up': () => moveChosenYarn(-1),
  'yarn-down': () => moveChosenYarn(1),
  'replace-yarn': replaceChosenYarn,
  'merge-yarn': mergeChosenYarn,
  'remove-yarn': removeChosenYarn,
  'ground-yarn': makeChosenYarnGround,
  'yarns-that-go': makeYarnsThatGo,
  recolour: recolourDesign,
  stash: openStash,
  touching: () => showSidePart('touching'),
} satisfies Partial<Record<CommandId, () => void>>;
