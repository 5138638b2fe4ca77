/** Cautions and care: printed with every pattern, short, and each with what to do. Common practice, no source. */
import type { Worded } from './worded.ts';

export interface Caution {
  readonly title: string;
  readonly text: string;
}

interface CareWords {
  readonly title: string;
  readonly takeCare: string;
  readonly careHead: string;
  readonly cautions: readonly Caution[];
  /** `mass` is that of the finished hanging, as shown. */
  readonly hangingUp: (mass: string) => Caution;
  readonly care: readonly Caution[];
  readonly selling: Caution;
  /** For the foot of the materials page: which page they are on, or what they say. */
  readonly readFirst: (page: number) => string;
  readonly inShort: (mass: string) => string;
}

export const careWords: Worded<CareWords> = {
  en: {
    title: 'Cautions and care',
    takeCare: 'Take care',
    careHead: 'Care',
    cautions: [
      {
        title: 'Blades',
        text: 'Scissors and blades are sharp. Cut away from your hands, and put blades out of reach when you are done.',
      },
      {
        title: 'Fire',
        text: 'Natural fibre burns. Hang the piece away from flames, candles and heaters. Never seal cotton ends with heat.',
      },
      {
        title: 'Children and pets',
        text: 'Cords and loops can strangle. Keep the work and the finished hanging out of reach of cribs, small children and pets.',
      },
    ],
    hangingUp: (mass) => ({
      title: 'Hanging it up',
      text: `The hanging weighs about ${mass}. Use a fixing that suits the wall and holds several times as much.`,
    }),
    care: [
      {
        title: 'Dust',
        text: 'Shake it outdoors, or brush it softly from the top down. A vacuum cleaner at low suction will do.',
      },
      {
        title: 'Water',
        text: 'Test each colour on a damp white cloth before any wetting. A yarn that is fast in one brand may run in another.',
      },
      { title: 'Light', text: 'Strong sun fades yarn. A wall out of direct sun keeps the colours.' },
    ],
    selling: {
      title: 'If you sell the finished piece',
      text: 'Rules for fibre labels and product safety differ from country to country: the European Union has Regulations (EU) 1007/2011 and 2023/988, and the United States have rules of their own for fibre content, most of all for wool. This is a pointer and no legal advice: follow local rules.',
    },
    readFirst: (page) => `Read the cautions on page ${page} before you begin.`,
    inShort: (mass) =>
      `Blades cut. Natural fibre burns: keep it away from flames and heaters. Cords can strangle: keep them out of reach of cribs, children and pets. The hanging weighs about ${mass}: use a fixing that holds several times as much.`,
  },
  de: {
    title: 'Vorsicht und Pflege',
    takeCare: 'Vorsicht',
    careHead: 'Pflege',
    cautions: [
      {
        title: 'Scheren und Klingen',
        text: 'Scheren und Klingen sind scharf. Schneiden Sie von den Händen weg, und räumen Sie Klingen nach der Arbeit außer Reichweite.',
      },
      {
        title: 'Feuer',
        text: 'Naturfasern brennen. Hängen Sie den Wandbehang fern von Flammen, Kerzen und Heizgeräten auf. Versiegeln Sie Baumwollenden nie mit Hitze.',
      },
      {
        title: 'Kinder und Tiere',
        text: 'An Schnüren und Schlaufen kann man sich strangulieren. Halten Sie die Arbeit und den fertigen Wandbehang außer Reichweite von Kinderbetten, kleinen Kindern und Tieren.',
      },
    ],
    hangingUp: (mass) => ({
      title: 'Aufhängen',
      text: `Der Wandbehang wiegt etwa ${mass}. Wählen Sie eine Befestigung, die zur Wand passt und ein Mehrfaches davon trägt.`,
    }),
    care: [
      {
        title: 'Staub',
        text: 'Schütteln Sie den Wandbehang im Freien aus oder bürsten Sie ihn von oben nach unten sanft ab. Auch ein Staubsauger auf niedriger Stufe geht.',
      },
      {
        title: 'Wasser',
        text: 'Prüfen Sie vor jedem Befeuchten jede Farbe mit einem feuchten weißen Tuch. Was bei einer Marke farbecht ist, kann bei einer anderen ausbluten.',
      },
      {
        title: 'Licht',
        text: 'Starke Sonne bleicht Garn aus. An einer Wand ohne direkte Sonne halten die Farben.',
      },
    ],
    selling: {
      title: 'Wenn Sie das fertige Stück verkaufen',
      text: 'Regeln für Textilkennzeichnung und Produktsicherheit sind von Land zu Land verschieden: In der Europäischen Union gelten die Verordnungen (EU) 1007/2011 und 2023/988, und die Vereinigten Staaten haben eigene Regeln für Faserangaben, vor allem für Wolle. Dies ist ein Hinweis und keine Rechtsberatung: Richten Sie sich nach den örtlichen Vorschriften.',
    },
    readFirst: (page) => `Lesen Sie die Hinweise auf Seite ${page}, bevor Sie beginnen.`,
    inShort: (mass) =>
      `An Klingen kann man sich schneiden. Naturfasern brennen: Halten Sie sie von Flammen und Heizgeräten fern. An Schnüren kann man sich strangulieren: Halten Sie sie von Kinderbetten, Kindern und Tieren fern. Der Wandbehang wiegt etwa ${mass}: Wählen Sie eine Befestigung, die ein Mehrfaches davon trägt.`,
  },
};
