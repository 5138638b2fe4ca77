/** Cautions and care: printed with every pattern, short, and each with what to do. Common practice, no source. */

export interface Caution {
  readonly title: string;
  readonly text: string;
}

export const cautions: readonly Caution[] = [
  {
    title: 'Blades',
    text: 'Scissors and blades for cord are sharp. Cut away from your hands, and put them away.',
  },
  {
    title: 'Fire',
    text: 'Natural fibre burns. Hang the piece away from flames, candles and heaters. Never seal cotton ends with heat.',
  },
  {
    title: 'Children and pets',
    text: 'Cords and loops can strangle. Keep the work and the finished hanging out of reach of cribs, small children and pets.',
  },
];

/** `mass` is that of the finished hanging, as shown. */
export function hangingUp(mass: string): Caution {
  return {
    title: 'Hanging it up',
    text: `The hanging has a mass of about ${mass}. Use a fixing that suits the wall and holds several times as much.`,
  };
}

export const care: readonly Caution[] = [
  {
    title: 'Dust',
    text: 'Shake it outdoors, or brush it softly from the top down. A vacuum cleaner at low suction will do.',
  },
  {
    title: 'Water',
    text: 'Test each colour on a damp white cloth before any wetting. Yarns that are fast in one brand may run in another.',
  },
  { title: 'Light', text: 'Strong sun fades yarn. A wall out of direct sun keeps the colours.' },
];

export const selling: Caution = {
  title: 'If you sell the finished piece',
  text: 'Rules for fibre labels and product safety differ from country to country: the European Union has Regulations (EU) 1007/2011 and 2023/988, and the United States have rules of their own for fibre content, most of all for wool. This is a pointer and no legal advice; local rules decide.',
};

/** For the foot of the materials page. */
export function cautionsInShort(mass: string): string {
  return `Blades cut. Natural fibre burns: keep it away from flames and heaters. Cords can strangle: out of reach of cribs, children and pets. Use a fixing that holds several times its ${mass}. More on the last page.`;
}
