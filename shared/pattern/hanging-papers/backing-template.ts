/** The template of the backing: to scale with its measures, and in true size over several sheets. */

import { textWidthMm } from '../faces/measure-text.ts';
import { newFlow, paragraph } from '../flow/flow.ts';
import type { Draft } from '../flow/page-foot.ts';
import { LATER_HEAD_MM, laterHead } from '../flow/page-head.ts';
import { clipLine } from '../page/clip-line.ts';
import { label } from '../page/label.ts';
import type { PathStep, PlainItem } from '../page/page.ts';
import { type Area, bodyOf } from '../page/papers.ts';
import { inks, ruleMm, sizes } from '../page/style.ts';
import { type Tile, tilesOf } from '../page/tiles.ts';
import type { PatternContext } from '../pattern-input.ts';
import { hangingWords } from '../words/hanging-words.ts';
import { type Backing, backingOf } from './backing.ts';

/** More sheets than this nobody tapes together. */
export const BACKING_SHEETS_AT_MOST = 24;

/** How far a mark reaches from where it is sewn. */
const MARK_MM = 2;

/** No page where the picture is too small for a backing. */
export function backingTemplate(context: PatternContext): Draft[] {
  const { materials, copy, figures, accent } = context;
  const words = hangingWords[copy.language];
  const backing = backingOf(materials.finished);
  if (!backing) return [];
  const flow = newFlow(context, words.titles.backing);
  const { area } = flow;
  const width = area.width * 0.9;
  const mm = (value: number) => figures.length(value);
  const { widthMm, heightMm, top, side } = backing;
  paragraph(flow, words.backing.introduction(mm(backing.insetMm)), { width });
  paragraph(
    flow,
    [
      words.backing.top(top.count, mm(top.apartMm)),
      words.backing.sides(side.count, mm(side.apartMm)),
      words.backing.fromCorner,
    ].join(' '),
    { width },
  );
  const figureWidth = textWidthMm(mm(heightMm), 'sans-bold', sizes.small) + 8;
  const room = {
    width: area.width - figureWidth - 2 * MARK_MM,
    height: area.y + area.height - flow.y - 22,
  };
  const times = Math.ceil(Math.max(1, widthMm / room.width, heightMm / room.height) * 10 - 1e-9) / 10;
  paragraph(flow, words.backing.scale(times), { sizeMm: sizes.note, color: inks.soft, after: 4 });
  const scale = 1 / times;
  const at = { x: area.x + MARK_MM, y: flow.y + MARK_MM };
  const window: Area = { x: 0, y: 0, width: widthMm, height: heightMm };
  flow.put({
    kind: 'figure',
    alt: words.backing.alt(mm(widthMm), mm(heightMm)),
    items: [
      ...drawBacking(backing, { window, ...at, scale, accent }),
      ...measures(at, [widthMm * scale, heightMm * scale], [mm(widthMm), mm(heightMm)]),
    ],
  });
  return flow.drafts().map((draft) => ({ ...draft, checkLine: times === 1 }));
}

/** No page where one sheet of the template to scale is true already, or where it would take too many. */
export function backingTiles(context: PatternContext): Draft[] {
  const { sheet, materials, copy, accent } = context;
  const words = hangingWords[copy.language];
  const backing = backingOf(materials.finished);
  const tiles = backing ? backingSheets(context) : [];
  if (!backing || tiles.length > BACKING_SHEETS_AT_MOST) return [];
  const area = bodyOf(sheet);
  const at = { x: area.x + MARK_MM, y: area.y + LATER_HEAD_MM + MARK_MM };
  return tiles.map(({ window, number }) => {
    const title = `${words.titles.backing}, ${words.backing.sheet(number, tiles.length)}`;
    const frame: PlainItem = {
      kind: 'box',
      ...at,
      width: window.width,
      height: window.height,
      stroke: inks.hair,
      strokeMm: ruleMm.thin,
    };
    const items = [frame, ...drawBacking(backing, { window, ...at, scale: 1, accent })];
    return {
      sheet,
      title,
      items: [
        ...laterHead(area, title, accent),
        { kind: 'figure' as const, alt: words.backing.tileAlt(number), items },
      ],
      checkLine: true,
    };
  });
}

/** The sheets that the template takes in true size. */
export function backingSheets({ sheet, materials }: Pick<PatternContext, 'sheet' | 'materials'>): Tile[] {
  const backing = backingOf(materials.finished);
  if (!backing) return [];
  const area = bodyOf(sheet);
  return tilesOf(
    { width: backing.widthMm, height: backing.heightMm },
    { width: area.width - 2 * MARK_MM, height: area.height - LATER_HEAD_MM - 2 * MARK_MM },
  );
}

interface Placed {
  readonly window: Area;
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly accent: string;
}

/** The outline and the marks, as far as they lie in the window. */
function drawBacking({ widthMm, heightMm, marks }: Backing, placed: Placed): PlainItem[] {
  const { window, x, y, scale, accent } = placed;
  const corners = [
    { x: 0, y: 0 },
    { x: widthMm, y: 0 },
    { x: widthMm, y: heightMm },
    { x: 0, y: heightMm },
    { x: 0, y: 0 },
  ];
  const toPage = (step: PathStep): PathStep =>
    step[0] === 'M' || step[0] === 'L'
      ? [step[0], x + (step[1] - window.x) * scale, y + (step[2] - window.y) * scale]
      : step;
  const outline = clipLine(corners, window).map(toPage);
  const crosses = marks
    .filter((mark) => isIn(mark, window))
    .flatMap((mark): PathStep[] => {
      const [atX, atY] = [x + (mark.x - window.x) * scale, y + (mark.y - window.y) * scale];
      return [
        ['M', atX - MARK_MM, atY],
        ['L', atX + MARK_MM, atY],
        ['M', atX, atY - MARK_MM],
        ['L', atX, atY + MARK_MM],
      ];
    });
  const path = (steps: PathStep[], stroke: string, strokeMm: number): PlainItem[] =>
    steps.length === 0 ? [] : [{ kind: 'path', steps, stroke, strokeMm }];
  return [...path(outline, inks.text, 0.4), ...path(crosses, accent, 0.4)];
}

function isIn(mark: { x: number; y: number }, { x, y, width, height }: Area): boolean {
  return mark.x >= x && mark.x <= x + width && mark.y >= y && mark.y <= y + height;
}

/** Width below the drawing and height at its right. */
function measures(
  { x, y }: { x: number; y: number },
  [width, height]: readonly [number, number],
  [wide, high]: readonly [string, string],
): PlainItem[] {
  const [right, below] = [x + width + MARK_MM + 2.5, y + height + MARK_MM + 2.5];
  const look = { face: 'sans-bold', sizeMm: sizes.small } as const;
  const half = textWidthMm(wide, 'sans-bold', sizes.small) / 2;
  return [
    {
      kind: 'path',
      steps: [
        ['M', right, y],
        ['L', right, y + height],
        ['M', x, below],
        ['L', x + width, below],
      ],
      stroke: inks.text,
      strokeMm: ruleMm.thin,
    },
    label(right + 2, y + height / 2 + sizes.small * 0.36, high, look),
    label(Math.max(x + width / 2, x + half), below + 4, wide, { ...look, align: 'center' }),
  ];
}
