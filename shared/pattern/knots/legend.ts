/** One strand of each material, with its name. */
import type { Picture } from './picture.ts';
import type { Material, Strand } from './strand.ts';

const FROM_X = -20;
const TO_X = -11;
const NAMES_X = -5.4;

function sample(material: Material, y: number, ends: Pick<Strand, 'from' | 'to'>): Strand {
  return {
    name: material,
    material,
    through: [
      [FROM_X, y, 0],
      [TO_X, y, 0],
    ],
    ...ends,
  };
}

export const whatIsDrawn: Picture = {
  strands: [
    sample('cord', 5, {}),
    sample('yarn', 13, { from: 'cut', to: 'cut' }),
    sample('other-yarn', 21, { from: 'cut', to: 'cut' }),
    sample('yarn', 29, { to: 'moves' }),
  ],
  words: [
    { x: NAMES_X, y: 5.9, word: 'cord', align: 'left' },
    { x: NAMES_X, y: 13.9, word: 'yarn', align: 'left' },
    { x: NAMES_X, y: 21.9, word: 'another-yarn', align: 'left' },
    { x: NAMES_X, y: 29.9, word: 'end-in-hand', align: 'left' },
  ],
};
