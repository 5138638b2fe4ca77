/**
 * The knots explained: a title for each lesson, and for each of its drawings what to do and, for those who can't see it, what is
 * seen. Common practice, no source.
 */
import type { lessonPictures } from '../knots/lesson-pictures.ts';
import type { DrawnWord } from '../knots/picture.ts';
import type { Worded } from './worded.ts';

export type Side = 'left' | 'right';

/** How a row is tied: where it goes, and which hand holds the cord and which one makes the turns. */
export interface Ways {
  readonly from: Side;
  readonly towards: Side;
  readonly holding: Side;
  readonly turning: Side;
}

/** What to do, and what is seen. */
export type StepWords = readonly [sentence: string, alt: string];

export type LessonsWords = {
  readonly [Lesson in keyof typeof lessonPictures]: {
    readonly title: string;
    readonly steps: { readonly [Picture in keyof (typeof lessonPictures)[Lesson]]: StepWords };
  };
};

interface KnotsWords {
  readonly title: string;
  /** Of the way that row 1 goes. */
  readonly introduction: (ways: Ways) => string;
  readonly lessons: (ways: Ways) => LessonsWords;
  readonly drawn: (ways: Ways) => Readonly<Record<DrawnWord, string>>;
}

export const knotsWords: Worded<KnotsWords> = {
  en: {
    title: 'The knots explained',
    introduction: ({ from, towards, holding, turning }) =>
      `Seen from the front. Row 1 of this pattern goes to the ${towards}, and the drawings follow it. A row that goes to the ${from} is tied the same way, as in a mirror. In both, your ${holding} hand holds the cord taut, and your ${turning} hand makes the turns.`,
    lessons: ({ from, towards, holding, turning }) => ({
      legend: {
        title: 'In these drawings',
        steps: {
          whatIsDrawn: [
            'Where a strand goes behind another, it is interrupted.',
            'Thick and pale: cord. Dark: the yarn. Pale with dark ticks: another yarn. An arrow: the end in your hand.',
          ],
        },
      },
      mounting: {
        title: 'Mounting a cut cord: the lark’s head',
        steps: {
          foldLaidOver: [
            `Fold the cord in half. With the dowel in your ${holding} hand, lay the fold over it, so that it hangs down behind.`,
            'The cord lies over the front of the dowel twice; its fold hangs behind the dowel.',
          ],
          endsThroughFold: [
            'Bring the fold forward under the dowel and put both ends back through it.',
            'The fold lies in front, and both ends go through it to the back.',
          ],
          headDrawnTight: [
            'Draw the ends down. The bar lies in front; the two legs are two cords of the chart.',
            'The tight lark’s head: two wraps over the dowel, a bar under it, and two legs hanging side by side.',
          ],
        },
      },
      knot: {
        title: `The knot, ${from} to ${towards}`,
        steps: {
          layingBehind: [
            `Hold the cord taut in your ${holding} hand. With your ${turning} hand lay the yarn behind it.`,
            `The ${holding} hand holds the cord, the ${turning} hand the yarn, which comes from the ${from} and goes behind the cord.`,
          ],
          firstTurn: [
            `First turn: round the front to the ${from}, then behind the yarn itself and behind the cord. Draw it tight.`,
            `The yarn goes over the front of the cord to the ${from}, behind itself and behind the cord to the ${towards}.`,
          ],
          secondTurn: [
            'Second turn: the same again just below, and out between the two turns.',
            `Below the tight first turn the yarn goes over the front to the ${from}, behind the cord, and out to the ${towards} over its own loop.`,
          ],
          drawnTight: [
            'Draw it tight against the first. The yarn lies ready behind the next cord.',
            `The tight knot: two turns, one above the other, over the front of the cord. The yarn goes on to the ${towards}, behind the next cord.`,
          ],
        },
      },
      attaching: {
        title: 'Attaching a new strand',
        steps: {
          newStrandLaidIn: [
            `Lay it behind the first cord of its colour, the tail pointing back, to the ${from}. Your ${holding} hand holds both.`,
            `New yarn behind the second cord, its tail behind the work to the ${from}, its long end going ${towards}.`,
          ],
          newStrandTied: [
            'Tie the knot with the long end. The tail stays behind.',
            `The knot on the second cord, the tail hanging down behind, the yarn going on to the ${towards}.`,
          ],
        },
      },
      carrying: {
        title: 'Carrying',
        steps: {
          carriedBehind: [
            'Carry a yarn flat behind the cords to its next knot: neither tight nor sagging.',
            'A yarn goes from the first knot behind two cords of another colour to the fourth.',
          ],
        },
      },
      changing: {
        title: 'Changing colour in the row',
        steps: {
          oldLaidDown: [
            'At the lifted cord, lay the yarn in hand down behind the work.',
            'Two knots; their yarn hangs down behind, before it reaches the third cord’s knot.',
          ],
          newTakenUp: [
            'Take up the new one, or attach it, behind the lifted cord.',
            'The first yarn hangs down behind; another comes up behind the third cord.',
          ],
          newTiedOn: [
            'Tie on with it. The first yarn hangs until its colour comes again.',
            'Two knots of the first yarn, two of the other; the first yarn hangs down behind the work.',
          ],
        },
      },
      joining: {
        title: 'Joining when a piece runs out',
        steps: {
          oldPieceEnds: [
            'Finish the knot, never stop inside one. The old tail points onward, behind the work.',
            `Two knots; the end of their yarn hangs behind the next cords, pointing to the ${towards}.`,
          ],
          freshPieceGoesOn: [
            'Tie the next cord with a fresh piece, its tail pointing back.',
            `A fresh piece ties the third cord; its tail points to the ${from}, crossing the old one behind the work.`,
          ],
        },
      },
      turning: {
        title: 'The turn at the edge',
        steps: {
          steppingDown: [
            `At the end of a row, step straight down and go back, the knots mirrored. Your ${holding} hand still holds the cord.`,
            `The last knot of a row at the ${towards} edge; the yarn steps down and ties the same cord again below, going ${from}.`,
          ],
        },
      },
      tyingOff: {
        title: 'Tying off loose ends, at the back',
        steps: {
          tiedOnce: [
            'Cross two neighbouring ends and wind them round each other once.',
            'Two ends wound round each other: three crossings.',
          ],
          tiedTwice: [
            'Once more, the other way round: the same end goes over first.',
            'The ends wound round each other a second time, below, the other way round.',
          ],
          drawnUpAndTrimmed: [
            'Draw the knot up close to the work, and trim the ends.',
            'The flat knot drawn up, its ends cut short.',
          ],
        },
      },
    }),
    drawn: ({ holding, turning }) => ({
      cord: 'cord',
      yarn: 'yarn',
      'another-yarn': 'another yarn',
      'end-in-hand': 'end in your hand',
      tail: 'tail',
      hangs: 'hangs',
      carry: 'carry',
      'old-tail': 'old tail',
      'fresh-tail': 'fresh tail',
      'holding-hand': `${holding} hand`,
      'turning-hand': `${turning} hand`,
    }),
  },
  de: {
    title: 'Die Knoten Schritt für Schritt',
    introduction: ({ from, towards, holding, turning }) =>
      `Von vorn gesehen. Reihe 1 dieser Anleitung geht nach ${way[towards]}, und die Zeichnungen folgen ihr. Eine Reihe nach ${way[from]} wird ebenso geknüpft, nur spiegelverkehrt. In beiden Fällen hält Ihre ${bent[holding]} Hand die Schnur straff, und Ihre ${bent[turning]} Hand legt die Windungen.`,
    lessons: ({ from, towards, holding, turning }) => ({
      legend: {
        title: 'Zeichenerklärung',
        steps: {
          whatIsDrawn: [
            'Wo ein Faden hinter einem anderen liegt, ist er unterbrochen.',
            'Dick und hell: Schnur. Dunkel: das Garn. Hell mit dunklen Strichen: ein anderes Garn. Ein Pfeil: das Ende in Ihrer Hand.',
          ],
        },
      },
      mounting: {
        title: 'Eine Schnur einhängen: der Ankerstich',
        steps: {
          foldLaidOver: [
            `Halten Sie das Rundholz mit der ${bent[holding]}n Hand. Legen Sie die Schnur doppelt darüber, die Schlaufe nach hinten.`,
            'Die Schnur liegt zweimal vorn über dem Rundholz; ihre Schlaufe hängt dahinter.',
          ],
          endsThroughFold: [
            'Holen Sie die Schlaufe unter dem Rundholz nach vorn und stecken Sie beide Enden nach hinten hindurch.',
            'Die Schlaufe liegt vorn, und beide Enden gehen durch sie nach hinten.',
          ],
          headDrawnTight: [
            'Ziehen Sie die Enden nach unten. Der Steg liegt vorn; die beiden Hälften sind zwei Schnüre des Zählmusters.',
            'Der feste Ankerstich: zwei Windungen über dem Rundholz, darunter ein Steg und zwei Hälften, die nebeneinander hängen.',
          ],
        },
      },
      knot: {
        title: `Der Knoten, von ${way[from]} nach ${way[towards]}`,
        steps: {
          layingBehind: [
            `Halten Sie die Schnur mit der ${bent[holding]}n Hand straff. Legen Sie mit der ${bent[turning]}n das Garn dahinter.`,
            `Die ${bent[holding]} Hand hält die Schnur, die ${bent[turning]} das Garn; es kommt von ${way[from]} und geht hinter der Schnur durch.`,
          ],
          firstTurn: [
            `Erste Windung: vorn herum nach ${way[from]}, dann hinter sich selbst und der Schnur durch. Ziehen Sie sie fest.`,
            `Das Garn geht vorn über die Schnur nach ${way[from]}, dann hinter sich selbst und hinter der Schnur nach ${way[towards]}.`,
          ],
          secondTurn: [
            'Zweite Windung: gleich darunter noch einmal ebenso, und zwischen den beiden Windungen heraus.',
            `Unter der festen ersten Windung geht das Garn vorn nach ${way[from]}, hinter der Schnur durch und über seiner eigenen Schlinge nach ${way[towards]} heraus.`,
          ],
          drawnTight: [
            'Ziehen Sie sie fest an die erste. Das Garn liegt hinter der nächsten Schnur bereit.',
            `Der feste Knoten: zwei Windungen übereinander, vorn auf der Schnur. Das Garn geht nach ${way[towards]} weiter, hinter die nächste Schnur.`,
          ],
        },
      },
      attaching: {
        title: 'Einen neuen Faden ansetzen',
        steps: {
          newStrandLaidIn: [
            `Legen Sie ihn hinter die erste Schnur seiner Farbe, das Fadenende zurück nach ${way[from]}. Ihre ${bent[holding]} Hand hält beides.`,
            `Neues Garn hinter der zweiten Schnur; sein Fadenende liegt hinter der Arbeit nach ${way[from]}, das lange Ende geht nach ${way[towards]}.`,
          ],
          newStrandTied: [
            'Knüpfen Sie den Knoten mit dem langen Ende. Das Fadenende bleibt hinten.',
            `Der Knoten an der zweiten Schnur; das Fadenende hängt hinten herab, das Garn geht nach ${way[towards]} weiter.`,
          ],
        },
      },
      carrying: {
        title: 'Mitführen',
        steps: {
          carriedBehind: [
            'Führen Sie ein Garn flach hinter den Schnüren zu seinem nächsten Knoten mit: weder straff noch durchhängend.',
            'Ein Garn geht vom ersten Knoten hinter zwei Schnüren mit anderer Farbe zum vierten.',
          ],
        },
      },
      changing: {
        title: 'Farbwechsel in der Reihe',
        steps: {
          oldLaidDown: [
            'Legen Sie an der angehobenen Schnur das bisherige Garn hinter der Arbeit ab.',
            'Zwei Knoten; ihr Garn hängt hinten herab, bevor es den Knoten der dritten Schnur erreicht.',
          ],
          newTakenUp: [
            'Nehmen Sie das neue hinter der angehobenen Schnur auf, oder setzen Sie es dort an.',
            'Das erste Garn hängt hinten herab; ein anderes kommt hinter der dritten Schnur herauf.',
          ],
          newTiedOn: [
            'Knüpfen Sie damit weiter. Das erste Garn hängt, bis seine Farbe wieder an der Reihe ist.',
            'Zwei Knoten mit dem ersten Garn, zwei mit dem anderen; das erste hängt hinter der Arbeit herab.',
          ],
        },
      },
      joining: {
        title: 'Anfügen, wenn ein Stück zu Ende geht',
        steps: {
          oldPieceEnds: [
            'Knüpfen Sie den Knoten fertig, hören Sie nie mittendrin auf. Das alte Ende zeigt hinter der Arbeit in Knüpfrichtung.',
            `Zwei Knoten; das Ende ihres Garns hängt hinter den nächsten Schnüren und zeigt nach ${way[towards]}.`,
          ],
          freshPieceGoesOn: [
            'Knüpfen Sie an der nächsten Schnur mit einem neuen Stück weiter; dessen Fadenende zeigt zurück.',
            `Ein neues Stück an der dritten Schnur; sein Fadenende zeigt nach ${way[from]} und kreuzt das alte Ende hinter der Arbeit.`,
          ],
        },
      },
      turning: {
        title: 'Umkehren am Rand',
        steps: {
          steppingDown: [
            `Gehen Sie am Reihenende gerade hinunter und spiegelverkehrt zurück. Ihre ${bent[holding]} Hand hält weiter die Schnur.`,
            `Der letzte Knoten einer Reihe am ${bent[towards]}n Rand; das Garn geht hinunter und wird darunter noch einmal an dieselbe Schnur geknüpft, nach ${way[from]}.`,
          ],
        },
      },
      tyingOff: {
        title: 'Lose Enden verknoten, auf der Rückseite',
        steps: {
          tiedOnce: [
            'Kreuzen Sie zwei benachbarte Enden und schlingen Sie sie einmal umeinander.',
            'Zwei Enden, umeinander geschlungen: drei Kreuzungen.',
          ],
          tiedTwice: [
            'Noch einmal, andersherum: Dasselbe Ende liegt wieder zuerst oben.',
            'Die Enden darunter ein zweites Mal umeinander geschlungen, andersherum.',
          ],
          drawnUpAndTrimmed: [
            'Ziehen Sie den Knoten dicht an die Arbeit und kürzen Sie die Enden.',
            'Der flache, festgezogene Knoten, die Enden kurz geschnitten.',
          ],
        },
      },
    }),
    drawn: ({ holding, turning }) => ({
      cord: 'Schnur',
      yarn: 'Garn',
      'another-yarn': 'anderes Garn',
      'end-in-hand': 'Ende in der Hand',
      tail: 'Ende',
      hangs: 'hängt',
      carry: 'mitgeführt',
      'old-tail': 'altes Ende',
      'fresh-tail': 'neues Ende',
      'holding-hand': `${bent[holding]} Hand`,
      'turning-hand': `${bent[turning]} Hand`,
    }),
  },
};

/** Behind 'von' and 'nach'. */
const way: Readonly<Record<Side, string>> = { left: 'links', right: 'rechts' };

/** Before a noun. */
const bent: Readonly<Record<Side, string>> = { left: 'linke', right: 'rechte' };
