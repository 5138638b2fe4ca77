/** What the parts of a pattern are called in its contents. */
import type { PatternPart } from '../../design/pattern-schema.ts';
import type { Worded } from './worded.ts';

export const partWords: Worded<Readonly<Record<PatternPart, string>>> = {
  en: {
    cover: 'Cover',
    welcome: 'Welcome',
    materials: 'Materials',
    'cut-list': 'Cut list',
    reading: 'How to read and tie the chart',
    knots: 'The knots explained',
    map: 'Map of the chart',
    chart: 'Chart',
    'chart-symbols': 'Chart in symbols',
    rows: 'Written rows',
    ticks: 'Tick sheet',
    strands: 'Strands, row by row',
    finishing: 'Finishing',
    fringe: 'Fringe template',
    care: 'Cautions and care',
    designer: 'About the designer',
  },
  de: {
    cover: 'Titelseite',
    welcome: 'Willkommen',
    materials: 'Material',
    'cut-list': 'Zuschnitt',
    reading: 'Das Zählmuster lesen und knüpfen',
    knots: 'Die Knoten Schritt für Schritt',
    map: 'Übersicht des Zählmusters',
    chart: 'Zählmuster',
    'chart-symbols': 'Zählmuster in Symbolen',
    rows: 'Ausgeschriebene Reihen',
    ticks: 'Reihen zum Abhaken',
    strands: 'Fäden, Reihe für Reihe',
    finishing: 'Fertigstellen',
    fringe: 'Schablone für die Fransen',
    care: 'Vorsicht und Pflege',
    designer: 'Entwurf und Kontakt',
  },
};
