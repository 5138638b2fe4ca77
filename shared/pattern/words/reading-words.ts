/** How to read the chart and tie from it. Figures come as they are shown. */
import { counted } from '../../units/counted.ts';
import type { Copy } from '../copy.ts';
import type { Worded } from './worded.ts';

type RowsForm = Copy['rowsForm'];

interface ReadingWords {
  readonly title: string;
  readonly chart: string;
  readonly order: string;
  readonly knot: string;
  readonly cell: string;
  readonly ways: (firstGoesRight: boolean) => string;
  readonly rules: string;
  readonly lifts: string;
  readonly bare: string;
  readonly pages: (count: number) => string;
  /** Where the chart frames repeats. */
  readonly frames: string;
  readonly rows: Readonly<Record<RowsForm, string>>;
  /** In a copy in greys: yarns that touch and share a grey. `isMore`: others do too. */
  readonly sameGreys: (pairs: readonly (readonly [string, string])[], isMore: boolean) => string;
  /** The order of work, a step each. */
  readonly steps: (figures: {
    readonly cutCords: number;
    /** True: each piece is cut as long as it is used, and `length` is the longest. */
    readonly fitted: boolean;
    readonly length: string;
    readonly tail: string;
    readonly startsLeft: boolean;
    /** Null where a page on finishing goes on. */
    readonly looseEnds: string | null;
    readonly hasFinishing: boolean;
    readonly liftsIn: LiftsIn;
    /** How far a strand is carried at most. */
    readonly carryCords: number;
    readonly carryRows: number;
    /** Whether a page tells of each strand. */
    readonly hasStrands: boolean;
    /** Where lengths of cords are told; null: nowhere. */
    readonly cordsIn: 'materials' | 'cut-list' | null;
  }) => readonly string[];
  readonly aboutTheKnot: string;
}

/** Where the cords to lift are told: in rows of either form, or by the chart's own marks where no rows are printed. */
type LiftsIn = RowsForm | 'chart';

const lifts: Readonly<Record<LiftsIn, string>> = {
  long: 'that its line names after ‘lift’',
  compact: 'that stand behind the semicolon of its line',
  chart: 'that have a lift mark in it',
};

const liftsGerman: Readonly<Record<LiftsIn, string>> = {
  long: 'in ihrer Zeile nach „anheben“ stehen',
  compact: 'in ihrer Zeile hinter dem Strichpunkt stehen',
  chart: 'in ihr eine Hebemarke haben',
};

export const readingWords: Worded<ReadingWords> = {
  en: {
    title: 'How to read and tie the chart',
    chart: 'The chart',
    order: 'Order of work',
    knot: 'The knot',
    cell: 'One cell is one knot around one cord. One column is one cord: cord 1 is the left one, seen from the front. Row 1 is the top one, right under the dowel.',
    ways(firstGoesRight) {
      const [first, second] = firstGoesRight
        ? ['left to right', 'right to left']
        : ['right to left', 'left to right'];
      return `Row 1 goes ${first}, row 2 ${second}, and so on in turn, without turning the work. Each row’s number and arrow stand on the side where that row starts.`;
    },
    rules:
      'Thick lines follow every tenth row and cord, thinner ones every fifth, counted from the first. A line of numbers counts the cords above and below.',
    lifts:
      'A small corner on a cell is a lift mark: a new yarn begins there, and its cord is lifted before the row is tied.',
    bare: 'A white cell with a small open diamond is bare: no knot, the cord shows. Carry no yarn across behind it: a strand may only hang straight down behind its cord.',
    pages: (count) =>
      `The chart goes on over ${count} pages, which share two rows or cords with their neighbours. The later page shows them pale and hatched: they stand on the page before as well, and the key counts them there. Marks beside the numbers say which page joins where.`,
    sameGreys: (pairs, isMore) =>
      `In this copy some yarns that touch are printed in one grey: ${pairs.map((pair) => pair.join(' and ')).join('; ')}${isMore ? '; and others' : ''}. Go by their symbols.`,
    frames:
      'A double line frames the first repeat where the same cords come again and again across some rows. The key says which cords and rows they are, and how many times they come.',
    rows: {
      long: 'The written rows tell the same in words: how many knots of which yarn, and in brackets from which cord to which. Tick each row when it is tied.',
      compact:
        'The written rows tell the same in short: how many knots of which yarn, by its symbol. How they are read stands above them. Tick each row when it is tied.',
    },
    steps: ({
      cutCords,
      fitted,
      length,
      tail,
      startsLeft,
      looseEnds,
      hasFinishing,
      liftsIn,
      cordsIn,
      carryCords,
      carryRows,
      hasStrands,
    }) => [
      `Cut ${cutCords === 1 ? '1 cord' : `${cutCords} cords`}. Fold each in half, lay the fold over the dowel and draw the ends through it: a lark’s head. Mount them side by side${cordsIn ? `; the ${cordsIn === 'materials' ? 'list of cord in the materials' : 'cut list'} says which length belongs to which cords` : ''}.`,
      `Cut the yarn in pieces ${fitted ? `as long as each is used, with something to spare, ${length} at most` : `of ${length}`}. Start row 1 at the ${startsLeft ? 'left' : 'right'} edge, close under the heads, and leave a tail of ${tail} at the back, pointing back to where the row came from.`,
      `Before a row is tied, lift the cords ${lifts[liftsIn]}: the first cord of each new yarn. Lay each up over the work, and let it down when you come to it: there the yarn in hand changes.`,
      `At a change, lay the yarn in hand down behind the work. Attach the new one, or pick it up again if it hangs at most ${counted(carryCords, 'cord')} and ${counted(carryRows, 'row')} away, and carry it behind the cords, not too tight.${hasStrands ? ' The page on strands says which to take; the pieces to cut are counted by it.' : ''}`,
      `When no more than its tail of ${tail} is left of a piece, go on with a fresh one at the next cord, never inside a knot. At the edge, step straight down to the next row.`,
      hasFinishing
        ? 'When the last row is tied, go on with the page on finishing.'
        : `When the last row is tied, ${looseEnds === null ? '' : `knot neighbouring loose ends together twice and trim them, or only trim them: there are ${looseEnds}. Then `}comb and trim the fringe.`,
    ],
    aboutTheKnot:
      'Every cell is one vertical double half hitch: the yarn lies behind the cord, comes round its front and through, twice, and is drawn tight each time. Two turns one above the other make one knot. The yarn then lies ready behind the next cord.',
  },
  de: {
    title: 'Das Zählmuster lesen und knüpfen',
    chart: 'Das Zählmuster',
    order: 'So gehen Sie vor',
    knot: 'Der Knoten',
    cell: 'Ein Kästchen ist ein Knoten um eine Schnur. Eine Spalte ist eine Schnur: Schnur 1 ist die linke, von vorn gesehen. Reihe 1 ist die oberste, gleich unter dem Rundholz.',
    ways(firstGoesRight) {
      const [first, second] = firstGoesRight
        ? ['von links nach rechts', 'von rechts nach links']
        : ['von rechts nach links', 'von links nach rechts'];
      return `Reihe 1 geht ${first}, Reihe 2 ${second} und so im Wechsel weiter, ohne die Arbeit zu wenden. Nummer und Pfeil jeder Reihe stehen auf der Seite, auf der sie beginnt.`;
    },
    rules:
      'Dicke Linien folgen jeder zehnten Reihe und Schnur, dünnere jeder fünften, von der ersten an gezählt. Oben und unten stehen die Nummern der Schnüre.',
    lifts:
      'Eine kleine Ecke an einem Kästchen ist eine Hebemarke: Dort beginnt ein neues Garn, und die Schnur wird angehoben, bevor die Reihe geknüpft wird.',
    bare: 'Ein weißes Kästchen mit einer kleinen offenen Raute ist frei: kein Knoten, die Schnur ist zu sehen. Führen Sie kein Garn quer dahinter vorbei: Ein Faden darf nur gerade hinter seiner Schnur herunterhängen.',
    pages: (count) =>
      `Das Zählmuster ist auf ${count} Seiten verteilt; benachbarte Seiten haben zwei Reihen oder zwei Schnüre gemeinsam. Auf der späteren Seite sind diese blass und schraffiert: Sie stehen auch auf der Seite davor, und die Legende zählt sie dort. Marken neben den Zahlen zeigen, welche Seite wo anschließt.`,
    sameGreys: (pairs, isMore) =>
      `In diesem Exemplar sind manche Garne, die sich berühren, in demselben Grau gedruckt: ${pairs.map((pair) => pair.join(' und ')).join('; ')}${isMore ? '; und andere' : ''}. Richten Sie sich nach den Symbolen.`,
    frames:
      'Wo sich in einigen Reihen ein Muster nebeneinander wiederholt, umrahmt eine doppelte Linie den ersten Rapport. Die Legende sagt, welche Schnüre und Reihen er umfasst und wie oft er kommt.',
    rows: {
      long: 'Die ausgeschriebenen Reihen sagen dasselbe in Worten: wie viele Knoten in welchem Garn und, in Klammern, von welcher bis zu welcher Schnur. Haken Sie jede Reihe ab, wenn sie geknüpft ist.',
      compact:
        'Die ausgeschriebenen Reihen sagen dasselbe in Kurzform: wie viele Knoten in welchem Garn, mit seinem Symbol. Wie man sie liest, steht über ihnen. Haken Sie jede Reihe ab, wenn sie geknüpft ist.',
    },
    steps: ({
      cutCords,
      fitted,
      length,
      tail,
      startsLeft,
      looseEnds,
      hasFinishing,
      liftsIn,
      cordsIn,
      carryCords,
      carryRows,
      hasStrands,
    }) => [
      `Schneiden Sie ${cutCords === 1 ? '1 Schnur' : `${cutCords} Schnüre`} zu. Legen Sie jede in der Mitte über das Rundholz und ziehen Sie die Enden durch die Schlaufe: ein Ankerstich. Hängen Sie sie nebeneinander ein${cordsIn ? `; welche Länge zu welchen Schnüren gehört, steht ${cordsIn === 'materials' ? 'auf der Materialseite' : 'im Zuschnitt'}` : ''}.`,
      `Schneiden Sie das Garn in Stücke${fitted ? `, jedes so lang, wie es gebraucht wird, mit etwas Reserve, höchstens ${length}` : ` von ${length}`}. Beginnen Sie Reihe 1 am ${startsLeft ? 'linken' : 'rechten'} Rand, dicht unter den Ankerstichen, und lassen Sie auf der Rückseite ein Fadenende von ${tail} hängen, das entgegen der Reihe zeigt.`,
      `Heben Sie vor jeder Reihe die Schnüre an, die ${liftsGerman[liftsIn]}: die jeweils erste Schnur eines neuen Garns. Legen Sie jede nach oben über die Arbeit und lassen Sie sie herunter, wenn Sie bei ihr sind: Dort wechseln Sie das Garn.`,
      `Legen Sie beim Wechsel das bisherige Garn hinter der Arbeit ab. Setzen Sie das neue an, oder nehmen Sie es wieder auf, wenn es höchstens ${counted(carryCords, 'Schnur', 'Schnüre')} und ${counted(carryRows, 'Reihe', 'Reihen')} entfernt hängt, und führen Sie es locker hinter den Schnüren mit.${hasStrands ? ' Welchen Faden Sie nehmen, steht auf der Seite über die Fäden; nach ihr sind die Stücke gezählt.' : ''}`,
      `Wenn von einem Stück nur noch das Fadenende von ${tail} übrig ist, knüpfen Sie an der nächsten Schnur mit einem neuen weiter; wechseln Sie nie mitten in einem Knoten. Am Rand gehen Sie gerade hinunter in die nächste Reihe.`,
      hasFinishing
        ? 'Nach der letzten Reihe geht es auf der Seite „Fertigstellen“ weiter.'
        : `Nach der letzten Reihe ${looseEnds === null ? '' : `verknoten Sie je zwei benachbarte lose Enden doppelt und kürzen sie, oder Sie kürzen sie nur: Es sind ${looseEnds}. Zuletzt `}kämmen und schneiden Sie die Fransen.`,
    ],
    aboutTheKnot:
      'Jedes Kästchen ist ein senkrechter Rippenknoten, also ein doppelter halber Schlag: Das Garn liegt hinter der Schnur, geht vorn um sie herum und hinter sich selbst hindurch, zweimal, und wird jedes Mal festgezogen. Zwei Windungen übereinander sind ein Knoten. Danach liegt das Garn hinter der nächsten Schnur bereit.',
  },
};
