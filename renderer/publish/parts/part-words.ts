/** What the parts of a pattern are called on the screen. */
import type { PatternPart } from '../../../shared/design/pattern-schema.ts';

export const partNames: Readonly<Record<PatternPart, string>> = {
  cover: 'Cover',
  welcome: 'Welcome and terms',
  materials: 'Materials',
  'cut-list': 'Cut list',
  reading: 'Reading the chart',
  knots: 'The knots',
  map: 'Map of the pages',
  chart: 'Chart',
  'chart-symbols': 'Chart in symbols',
  rows: 'Written rows',
  ticks: 'Tick sheet',
  strands: 'Strands',
  finishing: 'Finishing',
  fringe: 'Fringe template',
  care: 'Cautions and care',
  designer: 'The designer',
};
