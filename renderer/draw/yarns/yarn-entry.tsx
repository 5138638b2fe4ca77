/** One yarn in the panel: its ball and name choose it; where it is chosen, it can be moved up and down beside them. */
import { memo, type PointerEvent as ReactPointerEvent, useEffect, useRef } from 'react';
import { codeOf, type YarnId } from '../../../shared/design/codes.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import type { Units } from '../../../shared/units/units.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { Ball } from './ball.tsx';

interface YarnEntryProps {
  readonly yarn: Yarn;
  readonly isGround: boolean;
  readonly isChosen: boolean;
  /** Classes that show where a dragged yarn would be put. */
  readonly mark: string;
  readonly knots: number;
  readonly cutMm: number;
  readonly units: Units;
  readonly press: (event: ReactPointerEvent, id: YarnId) => void;
  readonly choose: (code: number) => void;
}

export const YarnEntry = memo(function YarnEntry(props: YarnEntryProps) {
  const { yarn, isGround, isChosen, mark, knots, cutMm, units, press, choose } = props;
  const entry = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (isChosen) entry.current?.scrollIntoView({ block: 'nearest' });
  }, [isChosen]);
  // Of all entries only the chosen one is reached with Tab; arrows lead to the others.
  const tabIndex = isChosen ? 0 : -1;
  return (
    <li ref={entry} className={mark} onPointerDown={(event) => press(event, yarn.id)}>
      <button
        type="button"
        className="yarn"
        aria-pressed={isChosen}
        title={yarn.name}
        tabIndex={tabIndex}
        onClick={() => choose(codeOf(yarn.id))}
        onDoubleClick={() => runCommand('change-yarn')}
      >
        <Ball color={yarn.color} symbol={yarn.symbol} />
        <span className="words">
          <span className="one-line name">{yarn.name}</span>
          <span className="need quiet small">
            <span>{knots > 0 ? formatYarnLength(cutMm, units, { enough: true }) : 'not used'}</span>
            {isGround && <span className="ground-tag">ground</span>}
          </span>
        </span>
        <span className="count">{knots > 0 ? knots.toLocaleString('en') : ''}</span>
      </button>
    </li>
  );
});
