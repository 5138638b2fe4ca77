/** Where symbols are asked for and the cells are too small for them: what to do. */
import { useStudio } from '../../store/use-studio.ts';
import type { Surface } from '../../surface/surface.ts';
import { useViewOf } from '../use-view-of.ts';

export function SymbolsNote({ surface }: { surface: Surface }) {
  const isAsked = useStudio(({ views }) => views.cells === 'symbols' && !views.finished && !views.distance);
  useViewOf(surface);
  if (!isAsked || surface.hasRoomForSymbols) return null;
  return (
    <p className="chart-note" role="status">
      Zoom in to see the symbols.
    </p>
  );
}
