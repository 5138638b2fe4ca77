/** The papers that go with a finished hanging: care card, fibre label, price tag, backing template, packing note. */
import type { HangingPaper } from '../hanging-papers/hanging-papers.ts';
import type { Caution } from './care-words.ts';
import type { Worded } from './worded.ts';

interface HangingWords {
  readonly titles: Readonly<Record<HangingPaper, string>>;
  readonly madeBy: (name: string) => string;
  /** What a sheet of cards is for, above them. */
  readonly cutLabels: string;
  readonly cutTags: string;
  readonly handmade: string;
  readonly care: {
    readonly head: string;
    /** Each in a few words: how it is kept, where the designer has not said it, and what is always said. */
    readonly usual: readonly Caution[];
    readonly always: readonly Caution[];
  };
  readonly fibre: {
    readonly head: string;
    readonly cord: string;
    readonly yarn: string;
    readonly dowel: string;
    readonly wood: string;
    readonly size: string;
    readonly rules: string;
  };
  readonly price: string;
  readonly backing: {
    readonly introduction: (inset: string) => string;
    readonly sides: (points: number, apart: string) => string;
    readonly top: (points: number, apart: string) => string;
    readonly fromCorner: string;
    readonly scale: (times: number) => string;
    readonly alt: (width: string, height: string) => string;
    readonly tooMany: (sheets: number) => string;
    readonly sheet: (number: number, of: number) => string;
    readonly tileAlt: (number: number) => string;
  };
  readonly packing: {
    readonly what: string;
    readonly hanging: string;
    readonly dowel: (thickness: string) => string;
    readonly careCard: string;
    readonly figures: string;
    readonly picture: string;
    readonly whole: string;
    readonly mass: string;
    readonly massNote: string;
    readonly from: string;
    readonly to: string;
    readonly unpacking: string;
    readonly unpackingText: string;
  };
}

export const hangingWords: Worded<HangingWords> = {
  en: {
    titles: {
      'care-card': 'Care card',
      'fibre-label': 'Fibre label',
      'price-tag': 'Price tag',
      backing: 'Backing template',
      'backing-tiles': 'Backing template in true size',
      'packing-note': 'Packing note',
    },
    madeBy: (name) => `made by ${name}`,
    cutLabels:
      'Cut along the lines. What a fibre label must say is ruled by law where you sell: look it up before you use these.',
    cutTags: 'Cut along the lines, and punch the hole for the string.',
    handmade: 'Knotted by hand',
    care: {
      head: 'Care',
      usual: [
        { title: 'Dust', text: 'Shake it outdoors, or brush it softly from the top down.' },
        { title: 'Water', text: 'Better none. Test every colour on a damp white cloth first.' },
        { title: 'Light', text: 'Hang it out of direct sun, and the colours last.' },
      ],
      always: [
        { title: 'Fire', text: 'Natural fibre burns: away from flames, candles and heaters.' },
        {
          title: 'Children, pets',
          text: 'Cords can strangle: hang it out of reach of cribs, children and pets.',
        },
      ],
    },
    fibre: {
      head: 'Fibre content',
      cord: 'Cord',
      yarn: 'Yarn',
      dowel: 'Dowel',
      wood: 'wood',
      size: 'Size',
      rules: 'See the care card.',
    },
    price: 'Price',
    backing: {
      introduction: (inset) =>
        `A backing of felt or cloth covers the loose ends. Cut it to the outer line; it stays ${inset} within the picture at every edge, so that it is not seen from the front. Sew it to the outermost cords at the marks with a few small stitches.`,
      sides: (points, apart) => `Each side: ${points} marks, ${apart} apart.`,
      top: (points, apart) => `Top: ${points} marks, ${apart} apart.`,
      fromCorner:
        'Both are counted from the upper corners. The lower edge stays open, so that dust falls out.',
      scale: (times) => (times === 1 ? 'Drawn in true size.' : `Drawn at a scale of 1 : ${times}.`),
      alt: (width, height) => `The outline of the backing, ${width} wide and ${height} high, with the marks.`,
      tooMany: (sheets) =>
        `The backing in true size would take ${sheets} sheets. Measure it from the drawing to scale instead.`,
      sheet: (number, of) => `sheet ${number} of ${of}`,
      tileAlt: (number) => `Sheet ${number} of the template.`,
    },
    packing: {
      what: 'In this parcel',
      hanging: '1 knotted wall hanging',
      dowel: (thickness) => `on its dowel, ${thickness} thick`,
      careCard: '1 care card',
      figures: 'Size and mass',
      picture: 'Knotted picture',
      whole: 'With fringe',
      mass: 'Mass, without packing',
      massNote: 'Computed from yarn, cord and dowel.',
      from: 'From',
      to: 'To',
      unpacking: 'Unpacking and hanging it up',
      unpackingText:
        'Roll it out on a clean table and let the cords hang for a day before you comb the fringe. Keep cords and packing away from small children and pets.',
    },
  },
  de: {
    titles: {
      'care-card': 'Pflegekarte',
      'fibre-label': 'Textiletikett',
      'price-tag': 'Preisschild',
      backing: 'Schablone für die Rückseite',
      'backing-tiles': 'Schablone für die Rückseite in Originalgröße',
      'packing-note': 'Packzettel',
    },
    madeBy: (name) => `gefertigt von ${name}`,
    cutLabels:
      'Schneiden Sie entlang der Linien. Was auf einem Textiletikett stehen muss, regelt das Gesetz am Ort des Verkaufs: Lesen Sie es nach, bevor Sie die Etiketten verwenden.',
    cutTags: 'Schneiden Sie entlang der Linien und stanzen Sie das Loch für das Band.',
    handmade: 'Von Hand geknüpft',
    care: {
      head: 'Pflege',
      usual: [
        { title: 'Staub', text: 'Im Freien ausschütteln oder von oben nach unten sanft abbürsten.' },
        { title: 'Wasser', text: 'Besser keines. Vorher jede Farbe mit einem feuchten weißen Tuch prüfen.' },
        { title: 'Licht', text: 'Nicht in direkte Sonne hängen, dann halten die Farben.' },
      ],
      always: [
        { title: 'Feuer', text: 'Naturfasern brennen: fern von Flammen, Kerzen und Heizgeräten.' },
        {
          title: 'Kinder, Tiere',
          text: 'An Schnüren kann man sich strangulieren: außer Reichweite von Kinderbetten, Kindern und Tieren hängen.',
        },
      ],
    },
    fibre: {
      head: 'Faserzusammensetzung',
      cord: 'Schnur',
      yarn: 'Garn',
      dowel: 'Rundholz',
      wood: 'Holz',
      size: 'Größe',
      rules: 'Siehe Pflegekarte.',
    },
    price: 'Preis',
    backing: {
      introduction: (inset) =>
        `Eine Rückseite aus Filz oder Stoff verdeckt die losen Enden. Schneiden Sie sie entlang der äußeren Linie zu; sie bleibt an jeder Kante ${inset} innerhalb des Bildes und ist von vorn nicht zu sehen. Nähen Sie sie an den Marken mit wenigen kleinen Stichen an die äußersten Schnüre.`,
      sides: (points, apart) => `Jede Seite: ${points} Marken im Abstand von ${apart}.`,
      top: (points, apart) => `Oben: ${points} Marken im Abstand von ${apart}.`,
      fromCorner:
        'Gezählt wird jeweils von den oberen Ecken aus. Die untere Kante bleibt offen, damit Staub herausfallen kann.',
      scale: (times) =>
        times === 1
          ? 'In Originalgröße gezeichnet.'
          : `Im Maßstab 1 : ${times.toLocaleString('de')} gezeichnet.`,
      alt: (width, height) => `Der Umriss der Rückseite, ${width} breit und ${height} hoch, mit den Marken.`,
      tooMany: (sheets) =>
        `Die Rückseite in Originalgröße bräuchte ${sheets} Blätter. Messen Sie stattdessen nach der verkleinerten Zeichnung.`,
      sheet: (number, of) => `Blatt ${number} von ${of}`,
      tileAlt: (number) => `Blatt ${number} der Schablone.`,
    },
    packing: {
      what: 'In diesem Paket',
      hanging: '1 geknüpfter Wandbehang',
      dowel: (thickness) => `an seinem Rundholz, ${thickness} dick`,
      careCard: '1 Pflegekarte',
      figures: 'Größe und Gewicht',
      picture: 'Geknüpftes Bild',
      whole: 'Mit Fransen',
      mass: 'Gewicht ohne Verpackung',
      massNote: 'Aus Garn, Schnur und Rundholz berechnet.',
      from: 'Von',
      to: 'An',
      unpacking: 'Auspacken und aufhängen',
      unpackingText:
        'Rollen Sie den Wandbehang auf einem sauberen Tisch aus und lassen Sie die Schnüre einen Tag hängen, bevor Sie die Fransen auskämmen. Halten Sie Schnüre und Verpackung von kleinen Kindern und Tieren fern.',
    },
  },
};
