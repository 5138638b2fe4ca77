/** Symmetry: what is copied while anything is drawn. Each choice is drawn by the symmetry itself. */
import { copyStrips } from '../../../shared/chart/symmetry/copy-strips.ts';
import { pointKinds, repeatKinds } from '../../../shared/chart/symmetry/kinds.ts';
import { centreOf } from '../../../shared/chart/symmetry/sound-symmetry.ts';
import { noSymmetry, type Symmetry } from '../../../shared/chart/symmetry/symmetry.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { useToolbar } from '../../shell/use-toolbar.ts';
import { useStudio } from '../../store/use-studio.ts';
import { FigureField } from '../options/figure-field.tsx';
import { changeSymmetry, chooseRepeat } from './symmetry-deeds.ts';
import './symmetry.css';

export function SymmetryPanel() {
  const symmetry = useStudio((state) => state.drawing.symmetry);
  const columns = useStudio((state) => state.open?.design.columns ?? 1);
  const rows = useStudio((state) => state.open?.design.rows ?? 1);
  const { point, repeat, centre } = symmetry;
  const points = useToolbar<HTMLDivElement>();
  const repeats = useToolbar<HTMLDivElement>();
  return (
    <section className="symmetry" aria-label="Symmetry">
      <div className="kinds" role="toolbar" aria-label="Mirrors and turns" {...points}>
        {pointKinds.map(({ kind, label, hint }) => (
          <button
            type="button"
            key={kind}
            aria-pressed={point === kind}
            aria-label={label}
            title={`${label}. ${hint}`}
            onClick={() => changeSymmetry({ point: kind })}
          >
            <KindPicture symmetry={{ ...noSymmetry, point: kind }} />
          </button>
        ))}
      </div>
      <p className="quiet small" aria-hidden="true">
        Repeat
      </p>
      <div className="kinds" role="toolbar" aria-label="Repeats" {...repeats}>
        {repeatKinds.map(({ kind, label, hint }) => (
          <button
            type="button"
            key={kind}
            aria-pressed={repeat === kind}
            aria-label={label}
            title={`${label}. ${hint}`}
            onClick={() => chooseRepeat(kind)}
          >
            <KindPicture symmetry={{ ...noSymmetry, repeat: kind, periodColumns: 4, periodRows: 4 }} />
          </button>
        ))}
      </div>
      <p className="small">{inWords(symmetry)}</p>
      {repeat !== 'none' && (
        <div className="row">
          <FigureField
            label="every"
            unit="cords"
            value={symmetry.periodColumns}
            min={1}
            max={columns}
            onChange={(periodColumns) => changeSymmetry({ periodColumns })}
          />
          <FigureField
            label=""
            unit="rows"
            value={symmetry.periodRows}
            min={1}
            max={rows}
            onChange={(periodRows) => changeSymmetry({ periodRows })}
          />
        </div>
      )}
      {point !== 'none' && (
        <div className="row">
          <span className="quiet small">
            Centre: {placeOf(centre.acrossHalves, 'cord')}, {placeOf(centre.downHalves, 'row')}
          </span>
          <button type="button" className="plain small" onClick={() => runCommand('centre-middle')}>
            Middle
          </button>
        </div>
      )}
    </section>
  );
}

/** What is chosen: 'Mirror left and right; no repeat'. */
function inWords({ point, repeat }: Symmetry): string {
  const pointLabel = pointKinds.find(({ kind }) => kind === point)!.label;
  const repeatLabel = repeatKinds.find(({ kind }) => kind === repeat)!.label;
  return `${pointLabel}; ${repeatLabel.charAt(0).toLowerCase()}${repeatLabel.slice(1)}`;
}

/** Half cells as a person counts: 'cord 4', or between two of them. */
function placeOf(halves: number, what: string): string {
  const before = Math.floor(halves / 2);
  return halves % 2 === 1 ? `${what} ${before + 1}` : `${what}s ${before}|${before + 1}`;
}

const pictureCells = 9;

/** A small flag, and its images under the symmetry: the flag itself is full, its images lighter. */
function KindPicture({ symmetry }: { symmetry: Symmetry }) {
  const size = { columns: pictureCells, rows: pictureCells };
  // A flag with a pole on one side, so that a mirror can be told from a turn.
  const flag = Int32Array.from([0, 1, 1, 1, 1, 1, 2, 1, 2, 1, 3, 1, 3, 1, 1, 1]);
  const copied = copyStrips(flag, { ...symmetry, centre: centreOf(size) }, size);
  const cells = new Map<string, boolean>();
  for (let i = 0; i < copied.length; i += 4) {
    for (let c = 0; c < copied[i + 2]!; c++)
      cells.set(`${copied[i]} ${copied[i + 1]! + c}`, i >= copied.length - flag.length);
  }
  return (
    <svg viewBox={`0 0 ${pictureCells} ${pictureCells}`} width="27" height="27" aria-hidden="true">
      {[...cells].map(([key, isOwn]) => {
        const [row, column] = key.split(' ').map(Number);
        return (
          <rect
            key={key}
            x={column}
            y={row}
            width="1"
            height="1"
            fill="currentColor"
            fillOpacity={isOwn ? 1 : 0.5}
          />
        );
      })}
    </svg>
  );
}
