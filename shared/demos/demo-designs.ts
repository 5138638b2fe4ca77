/** The designs that a new shelf starts with: our own inventions, drawn from shapes. */
import type { Design } from '../design/design.ts';
import { lampAtHarrowPoint } from './lamp-at-harrow-point.ts';
import { mothAtTheWindow } from './moth-at-the-window.ts';
import { sallowWater } from './sallow-water.ts';

export const demoDesigns: readonly { readonly fileName: string; readonly make: () => Design }[] = [
  { fileName: 'Moth at the window.larkrow', make: mothAtTheWindow },
  { fileName: 'Lamp at Harrow Point.larkrow', make: lampAtHarrowPoint },
  { fileName: 'Sallow Water.larkrow', make: sallowWater },
];
