/**
 * What the studio holds while it runs (`state.ts`): one open design with its history, the flat chart that follows it,
 * and what the person has chosen. A store without React; `use-studio.ts` is the thin adapter. The open design changes
 * only through `changing.ts`.
 */
import { createStore } from 'zustand/vanilla';
import { settingsSchema } from '../../shared/bridge.ts';
import { flatten } from '../../shared/chart/chart.ts';
import { centreOf } from '../../shared/chart/symmetry/sound-symmetry.ts';
import { codeOf } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { noHistory, type Step } from '../../shared/design/history.ts';
import { type Drawing, startingDrawing } from './drawing.ts';
import type { Home, OpenDesign, StudioState } from './state.ts';
import { startingViews, type Views } from './views.ts';

export const studio = createStore<StudioState>(() => ({
  screen: 'shelf',
  settings: settingsSchema.parse({}),
  open: null,
  tool: 'knot',
  drawing: startingDrawing,
  views: startingViews,
  under: null,
  patch: null,
  motifs: null,
  ghost: null,
  marked: null,
  draft: {},
  facts: null,
}));

let openings = 0;

/** Puts a design on the Draw screen. `home` null: it was never saved; its file is then called `fileStem`, or as its title. */
export function openDesign(design: Design, home: Home | null, fileStem: string | null = null): void {
  const chart = flatten(design);
  const top = design.layers.findLast((layer) => layer.visible && !layer.locked) ?? design.layers.at(-1)!;
  const firstYarn = design.yarns.find((yarn) => yarn.id !== design.ground) ?? design.yarns[0]!;
  const { drawing } = studio.getState();
  studio.setState({
    screen: 'draw',
    under: null,
    patch: null,
    ghost: null,
    marked: null,
    draft: {},
    facts: null,
    drawing: {
      ...drawing,
      symmetry: { ...drawing.symmetry, point: 'none', repeat: 'none', centre: centreOf(design) },
    },
    open: {
      opening: ++openings,
      design,
      chart,
      history: noHistory,
      home,
      fileStem,
      savedAt: home ? null : 'nothing',
      aside: 0,
      savedAside: 0,
      layer: top.id,
      code: codeOf(firstYarn.id),
      touched: [],
      stroke: null,
    },
  });
}

export function closeDesign(): void {
  studio.setState({ open: null, facts: null, under: null, patch: null, ghost: null, screen: 'shelf' });
}

/** True where the open design holds work that is not on disk. */
export function isUnsaved(open: OpenDesign | null): boolean {
  if (!open) return false;
  const isDrawing = open.stroke !== null && !open.stroke.isShown && open.stroke.from !== open.design;
  const isChanged = (open.history.done.at(-1) ?? null) !== open.savedAt || open.aside !== open.savedAside;
  return isDrawing || isChanged;
}

/** The design is on disk as it was at `step`, the last step when its text was made, and with what was changed beside. */
export function markSaved(home: Home, step: Step | null, aside: number): void {
  updateOpen((open) => ({ ...open, home, savedAt: step, savedAside: aside }));
}

export function chooseCode(code: number): void {
  updateOpen((open) => ({ ...open, code }));
}

export function changeDrawing(change: Partial<Drawing>): void {
  studio.setState(({ drawing }) => ({ drawing: { ...drawing, ...change } }));
}

export function changeViews(change: Partial<Views>): void {
  studio.setState(({ views }) => ({ views: { ...views, ...change } }));
}

/** For `changing.ts` and this file only: others change the open design through them. */
export function updateOpen(next: (open: OpenDesign) => OpenDesign): void {
  studio.setState((state) => {
    if (!state.open) return state;
    const open = next(state.open);
    const { columns, rows } = state.open.design;
    // Places on a chart of another size mean nothing.
    if (open.design.columns === columns && open.design.rows === rows) return { open };
    const symmetry = { ...state.drawing.symmetry, centre: centreOf(open.design) };
    return {
      open,
      patch: null,
      under: null,
      ghost: null,
      marked: null,
      drawing: { ...state.drawing, symmetry },
    };
  });
}
