import type { CommandId } from '../../../shared/commands.ts';
import type { Sight } from '../../../shared/yarn/sight.ts';

/** The sights that colours can be shown for: the command, the words in a list, and a tag where there is little room. */
export const sights: readonly (readonly [Sight, CommandId, label: string, short: string])[] = [
  ['normal', 'sight-normal', 'in normal sight', ''],
  ['protan', 'sight-protan', 'without red cones (protan)', 'no red cones'],
  ['deutan', 'sight-deutan', 'without green cones (deutan)', 'no green cones'],
  ['tritan', 'sight-tritan', 'without blue cones (tritan)', 'no blue cones'],
  ['grey', 'sight-grey', 'in greys, as in print', 'greys'],
];
