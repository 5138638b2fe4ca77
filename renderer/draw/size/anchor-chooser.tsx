/** Where the picture stays while the chart grows or shrinks: one of nine places. */
import type { Anchor } from '../../../shared/design/size-edits.ts';

interface AnchorChooserProps {
  readonly value: Anchor;
  readonly onChange: (anchor: Anchor) => void;
}

export function AnchorChooser({ value, onChange }: AnchorChooserProps) {
  return (
    <fieldset className="field anchor-chooser">
      <legend>The picture stays</legend>
      <div className="places">
        {downs.flatMap((down, y) =>
          acrosses.map((across, x) => (
            <button
              type="button"
              key={`${down} ${across}`}
              aria-pressed={value.down === down && value.across === across}
              aria-label={nameOf({ across, down })}
              title={nameOf({ across, down })}
              onClick={() => onChange({ across, down })}
            >
              <svg viewBox="0 0 22 22" width="22" height="22" aria-hidden="true">
                <rect
                  x="1.5"
                  y="1.5"
                  width="19"
                  height="19"
                  fill="none"
                  stroke="currentColor"
                  strokeDasharray="2 2"
                />
                <rect x={1.5 + x * 5} y={1.5 + y * 5} width="9" height="9" fill="currentColor" />
              </svg>
            </button>
          )),
        )}
      </div>
    </fieldset>
  );
}

const acrosses = ['left', 'middle', 'right'] as const;
const downs = ['top', 'middle', 'bottom'] as const;

function nameOf({ across, down }: Anchor): string {
  if (across === 'middle') return down === 'middle' ? 'in the middle' : `at the ${down}`;
  return down === 'middle' ? `at the ${across}` : `at the ${down} ${across}`;
}
