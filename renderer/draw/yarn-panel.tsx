/** The design's yarns beside the chart, as balls with their symbol, what they take, and how many knots they tie. */
import { memo, useEffect, useRef } from 'react';
import type { CommandId } from '../../shared/commands.ts';
import { BARE, codeOf } from '../../shared/design/codes.ts';
import type { Yarn } from '../../shared/design/schema.ts';
import type { Units } from '../../shared/units/units.ts';
import { formatYarnLength } from '../../shared/units/yarn-length.ts';
import { runCommand } from '../shell/command-bus.ts';
import { commandById } from '../shell/keys.ts';
import { chooseCode } from '../store/studio.ts';
import { useStudio } from '../store/use-studio.ts';
import { drawBall } from './yarn-ball.ts';

export function YarnPanel() {
  const yarns = useStudio((state) => state.open?.design.yarns);
  const ground = useStudio((state) => state.open?.design.ground);
  const chosen = useStudio((state) => state.open?.code);
  const needs = useStudio((state) => state.facts?.materials?.yarns);
  const bare = useStudio((state) => state.facts?.materials?.totals.bareCells);
  const units = useStudio((state) => state.settings.units);
  if (!yarns) return null;
  return (
    <aside className="yarns" aria-label="Yarns">
      <header>
        <h3>Yarns</h3>
        <span className="quiet">{yarns.length}</span>
      </header>
      <ul>
        {yarns.map((yarn) => {
          const need = needs?.find(({ id }) => id === yarn.id);
          return (
            <YarnEntry
              key={yarn.id}
              yarn={yarn}
              isGround={yarn.id === ground}
              isChosen={codeOf(yarn.id) === chosen}
              knots={need?.knots ?? 0}
              cutMm={need?.cutMm ?? 0}
              units={units}
            />
          );
        })}
        <li>
          <button
            type="button"
            className="yarn"
            aria-pressed={chosen === BARE}
            onClick={() => chooseCode(BARE)}
            title="Leaves the cord without a knot"
          >
            <span className="bare-ball" />
            <span className="words">
              <span className="one-line name">Bare cord</span>
              <span className="quiet small">no knot</span>
            </span>
            <span className="count">{bare?.toLocaleString() ?? ''}</span>
          </button>
        </li>
      </ul>
      <footer>
        <button type="button" onClick={() => runCommand('add-yarn')}>
          Add…
        </button>
        {deeds.map(([command, label]) => (
          <button
            type="button"
            key={command}
            disabled={chosen === BARE}
            title={commandById(command).label}
            onClick={() => runCommand(command)}
          >
            {label}
          </button>
        ))}
      </footer>
    </aside>
  );
}

/** What can be done with the yarn that is chosen. */
const deeds: readonly (readonly [CommandId, string])[] = [
  ['change-yarn', 'Change…'],
  ['replace-yarn', 'Replace…'],
  ['merge-yarn', 'Merge…'],
  ['ground-yarn', 'Ground'],
  ['remove-yarn', 'Remove'],
];

interface YarnEntryProps {
  yarn: Yarn;
  isGround: boolean;
  isChosen: boolean;
  knots: number;
  cutMm: number;
  units: Units;
}

const YarnEntry = memo(function YarnEntry({ yarn, isGround, isChosen, knots, cutMm, units }: YarnEntryProps) {
  const entry = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (isChosen) entry.current?.scrollIntoView({ block: 'nearest' });
  }, [isChosen]);
  return (
    <li ref={entry}>
      <button
        type="button"
        className="yarn"
        aria-pressed={isChosen}
        title={yarn.name}
        onClick={() => chooseCode(codeOf(yarn.id))}
        onDoubleClick={() => runCommand('change-yarn')}
      >
        <Ball color={yarn.color} symbol={yarn.symbol} />
        <span className="words">
          <span className="one-line name">{yarn.name}</span>
          <span className="one-line quiet small">
            {knots > 0 ? formatYarnLength(cutMm, units, { enough: true }) : 'not used'}
            {isGround && ' · ground'}
          </span>
        </span>
        <span className="count">{knots > 0 ? knots.toLocaleString() : ''}</span>
      </button>
    </li>
  );
});

function Ball({ color, symbol }: { color: string; symbol: string }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (canvas.current) drawBall(canvas.current, color, symbol);
  }, [color, symbol]);
  return <canvas ref={canvas} className="ball" />;
}
