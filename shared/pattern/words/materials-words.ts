/** The materials page. Figures come as they are shown. */
import type { GaugeBasis } from '../../materials/materials.ts';
import type { Worded } from './worded.ts';

interface MaterialsWords {
  readonly title: string;
  readonly gauge: (figures: {
    readonly from: GaugeBasis['from'];
    readonly cords: string;
    readonly rows: string;
    /** True: over 4 in; else over 10 cm. */
    readonly inches: boolean;
    /** How unsure the size is, where it is not measured: '20 %'. */
    readonly share: string;
  }) => string;
  /** `share`: how unsure the yarn is that is used, where it is not measured. */
  readonly knot: (measured: boolean, share: string) => string;
  /** `fitted`: each piece is cut as long as it is used; `length` is then the longest. */
  readonly pieces: (figures: {
    readonly fitted: boolean;
    readonly length: string;
    readonly tail: string;
    readonly margin: string;
  }) => string;
  readonly yarn: string;
  /** Null where pieces are of several lengths. */
  readonly yarnHeads: (
    pieceLength: string | null,
  ) => readonly [string, string, string, string, string, string, string];
  /** What yarn to look for: `names` is empty where all are of one kind. */
  readonly kind: (names: readonly string[], thickness: string, length: string, fibre: string) => string;
  readonly together: (figures: {
    readonly knots: string;
    readonly isOneKnot: boolean;
    readonly length: string;
    readonly mass: string;
    readonly looseEnds: string;
    readonly live: number;
  }) => string;
  readonly cord: (name: string, thickness: string) => string;
  readonly cordHeads: readonly [string, string, string, string];
  readonly cordsTogether: (count: number, shown: string, length: string, mass: string) => string;
  readonly spare: string;
  readonly spread: (width: string) => string;
  readonly dowelAndTools: string;
  /** `headsWider`: the lark’s heads side by side are wider than the picture. */
  readonly dowel: (thickness: string, length: string, overhang: string, headsWider: boolean) => string;
  readonly tools: string;
  readonly notes: string;
}

export const materialsWords: Worded<MaterialsWords> = {
  en: {
    title: 'Materials',
    gauge({ from, cords, rows, inches, share }) {
      const figures = `${cords} cords across and ${rows} rows down to ${inches ? '4 in' : '10 cm'}`;
      if (from === 'swatches') return `Gauge, measured on a swatch: ${figures}.`;
      return from === 'told'
        ? `Gauge, as the designer gives it, not measured on a swatch (± ${share}): about ${figures}. Tie a swatch first; sizes and lengths change with it.`
        : `Gauge, an estimate from the thickness of cord and yarn (± ${share}): about ${figures}. Tie a swatch first; sizes and lengths change with it.`;
    },
    knot: (measured, share) =>
      measured
        ? 'Yarn per knot is measured on a swatch.'
        : `Yarn per knot is an estimate (± ${share}), not yet measured.`,
    pieces: ({ fitted, length, tail, margin }) =>
      `${fitted ? `Each piece is cut as long as it is used, with something to spare, ${length} at most,` : `Pieces are cut ${length} long,`} with a tail of ${tail} at each end. The skeins include a margin of ${margin} %.`,
    yarn: 'Yarn',
    yarnHeads: (length) => [
      'yarn',
      'knots',
      'strands',
      length === null ? 'pieces' : `pieces of ${length}`,
      'length cut',
      'mass',
      'skeins',
    ],
    kind: (names, thickness, length, fibre) =>
      `${names.length > 0 ? names.join(', ') : 'All yarns'}: ${fibre ? `${fibre}, ` : ''}${thickness} thick, ${length} to a skein.`,
    together: ({ knots, isOneKnot, length, mass, looseEnds, live }) =>
      `Together ${knots} ${isOneKnot ? 'knot' : 'knots'}, ${length} and ${mass} of yarn; ${looseEnds} loose ends at the back, and at most ${live === 1 ? '1 strand' : `${live} strands`} hanging at once. Buy all skeins of one yarn from one dye lot.`,
    cord: (name, thickness) => `Cord${name ? `: ${name}` : ''}, ${thickness}`,
    cordHeads: ['for cords', 'pieces', 'length each', 'together'],
    cordsTogether: (count, shown, length, mass) =>
      `${shown} cut ${count === 1 ? 'cord' : 'cords'}, ${length} and ${mass} in all. Each is folded in half over the dowel and gives two cords of the chart.`,
    spare:
      'The number of cords is odd: the last cut cord has one leg too many. Leave it hanging behind the work, and trim it at the end.',
    spread: (width) =>
      `A lark’s head is about ${width} wide, more than its two cords take in the picture: the heads spread on the dowel, and the cords fan in to the first row.`,
    dowelAndTools: 'Dowel and tools',
    dowel: (thickness, length, overhang, headsWider) =>
      `A dowel ${thickness} thick and at least ${length} long: the width of ${headsWider ? 'the lark’s heads side by side' : 'the picture'} and ${overhang} at each end. A length of cord to hang it from.`,
    tools:
      'Sharp scissors, a tape measure, a comb for the fringe, and a clip or bobbin for each hanging strand if you like. A blunt needle for loose ends.',
    notes: 'Notes from the designer',
  },
  de: {
    title: 'Material',
    gauge({ from, cords, rows, inches, share }) {
      const figures = `${cords} Schnüre in der Breite und ${rows} Reihen in der Höhe auf ${inches ? '4 Zoll' : '10 cm'}`;
      if (from === 'swatches') return `Knotenprobe, an einem Probestück gemessen: ${figures}.`;
      return from === 'told'
        ? `Knotenprobe, wie sie der Entwurf vorgibt, nicht an einem Probestück gemessen (± ${share}): etwa ${figures}. Knüpfen Sie zuerst ein Probestück; Maße und Längen ändern sich damit.`
        : `Knotenprobe, aus der Dicke von Schnur und Garn geschätzt (± ${share}): etwa ${figures}. Knüpfen Sie zuerst ein Probestück; Maße und Längen ändern sich damit.`;
    },
    knot: (measured, share) =>
      measured
        ? 'Der Garnverbrauch je Knoten ist an einem Probestück gemessen.'
        : `Der Garnverbrauch je Knoten ist geschätzt (± ${share}).`,
    pieces: ({ fitted, length, tail, margin }) =>
      `${fitted ? `Jedes Stück wird so lang zugeschnitten, wie es gebraucht wird, mit etwas Reserve, höchstens ${length},` : `Die Stücke werden ${length} lang zugeschnitten,`} mit je ${tail} Fadenende an beiden Seiten. Die Stränge enthalten ${margin} % Zugabe.`,
    yarn: 'Garn',
    yarnHeads: (length) => [
      'Garn',
      'Knoten',
      'Fäden',
      length === null ? 'Stücke' : `Stücke zu ${length}`,
      'zugeschnitten',
      'Gewicht',
      'Stränge',
    ],
    kind: (names, thickness, length, fibre) =>
      `${names.length > 0 ? names.join(', ') : 'Alle Garne'}: ${fibre ? `${fibre}, ` : ''}${thickness} dick, ${length} je Strang.`,
    together: ({ knots, length, mass, looseEnds, live }) =>
      `Zusammen ${knots} Knoten, ${length} und ${mass} Garn; auf der Rückseite ${looseEnds} lose Enden und höchstens ${live === 1 ? '1 hängender Faden' : `${live} hängende Fäden`}. Kaufen Sie jedes Garn aus einer einzigen Farbpartie.`,
    cord: (name, thickness) => `Schnur${name ? `: ${name}` : ''}, ${thickness}`,
    cordHeads: ['für die Schnüre', 'Stücke', 'Länge je Stück', 'zusammen'],
    cordsTogether: (count, shown, length, mass) =>
      `${shown} ${count === 1 ? 'zugeschnittene Schnur' : 'zugeschnittene Schnüre'}, zusammen ${length} und ${mass}. Jede wird in der Mitte über das Rundholz gelegt und ergibt zwei Schnüre des Zählmusters.`,
    spare:
      'Die Zahl der Schnüre ist ungerade: Die letzte zugeschnittene Schnur hat eine Hälfte zu viel. Lassen Sie sie hinter der Arbeit hängen und schneiden Sie sie am Ende ab.',
    spread: (width) =>
      `Ein Ankerstich ist etwa ${width} breit, mehr als seine beiden Schnüre im Bild: Die Ankerstiche stehen weiter auseinander, und die Schnüre laufen zur ersten Reihe hin zusammen.`,
    dowelAndTools: 'Rundholz und Werkzeug',
    dowel: (thickness, length, overhang, headsWider) =>
      `Ein Rundholz, ${thickness} dick und mindestens ${length} lang: die Breite ${headsWider ? 'der Ankerstiche nebeneinander' : 'des Bildes'} und ${overhang} an jedem Ende. Ein Stück Schnur zum Aufhängen.`,
    tools:
      'Eine scharfe Schere, ein Maßband, ein Kamm für die Fransen und, wenn Sie mögen, eine Klammer oder Spule für jeden hängenden Faden. Eine stumpfe Nadel für lose Enden.',
    notes: 'Anmerkungen zum Entwurf',
  },
};
