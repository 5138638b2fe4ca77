/**
 * The design's yarns beside the chart, as balls with their symbol, what they take, and how many knots they tie. By keys:
 * arrows choose, Alt with an arrow moves the yarn in the list.
 */
import { useRef } from 'react';
import type { CommandId } from '../../../shared/commands.ts';
import { BARE, codeOf, type YarnId } from '../../../shared/design/codes.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { commandById } from '../../shell/keys.ts';
import { chooseCode, studio } from '../../store/studio.ts';
import { useStudio } from '../../store/use-studio.ts';
import { useListDrag } from '../list-drag.ts';
import { MoreYarnDeeds } from './more-yarn-deeds.tsx';
import { moveYarnTo, stepYarn } from './yarn-deeds.ts';
import { YarnEntry } from './yarn-entry.tsx';
import './yarns.css';

export function YarnPanel() {
  const yarns = useStudio((state) => state.open?.design.yarns);
  const ground = useStudio((state) => state.open?.design.ground);
  const chosen = useStudio((state) => state.open?.code);
  const needs = useStudio((state) => state.facts?.materials?.yarns);
  const bare = useStudio((state) => state.facts?.materials?.totals.bareCells);
  const units = useStudio((state) => state.settings.units);
  const list = useRef<HTMLUListElement>(null);
  const drag = useListDrag(list, '.ball', dropYarn);
  // Always the same functions, so that new figures draw only those entries again that they are about.
  const press = useRef(drag.press).current;
  const choose = useRef((code: number) => {
    if (!drag.isDragEnd()) chooseCode(code);
  }).current;
  if (!yarns) return null;

  const onKey = (event: React.KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return;
    const run = (event.altKey ? altKeys : plainKeys)[event.key];
    if (!run) return;
    event.preventDefault();
    event.stopPropagation();
    run();
    // The entry that is chosen now is drawn a moment later.
    requestAnimationFrame(() =>
      list.current?.querySelector<HTMLElement>('.yarn[aria-pressed="true"]')?.focus(),
    );
  };

  return (
    <aside className="yarns" aria-label="Yarns">
      <header>
        <h3>Yarns</h3>
        <span className="quiet">{yarns.length}</span>
      </header>
      <ul ref={list} onKeyDown={onKey}>
        {yarns.map((yarn, at) => {
          const need = needs?.find(({ id }) => id === yarn.id);
          return (
            <YarnEntry
              key={yarn.id}
              yarn={yarn}
              isGround={yarn.id === ground}
              isChosen={codeOf(yarn.id) === chosen}
              mark={drag.markOf(yarn.id, at, yarns.length)}
              knots={need?.knots ?? 0}
              cutMm={need?.cutMm ?? 0}
              units={units}
              press={press}
              choose={choose}
            />
          );
        })}
        <li>
          <button
            type="button"
            className="yarn"
            aria-pressed={chosen === BARE}
            tabIndex={chosen === BARE ? 0 : -1}
            onClick={() => chooseCode(BARE)}
            title="Leaves the cord without a knot"
          >
            <span className="bare-ball" />
            <span className="words">
              <span className="one-line name">Bare cord</span>
              <span className="quiet small">no knot</span>
            </span>
            <span className="count">{bare?.toLocaleString('en') ?? ''}</span>
          </button>
        </li>
      </ul>
      <footer>
        {deeds.map(([command, label, needsYarn]) => (
          <button
            type="button"
            key={command}
            disabled={needsYarn && chosen === BARE}
            title={commandById(command).label}
            onClick={() => runCommand(command)}
          >
            {label}
          </button>
        ))}
        <span className="up-and-down">
          {moves.map(([command, sign]) => (
            <button
              type="button"
              key={command}
              disabled={chosen === BARE}
              aria-label={commandById(command).label}
              title={`${commandById(command).label} (Alt+${sign})`}
              onClick={() => runCommand(command)}
            >
              {sign}
            </button>
          ))}
        </span>
        <MoreYarnDeeds />
      </footer>
    </aside>
  );
}

/** `gap` is how many entries stood above the place where the yarn was let go. */
function dropYarn(id: YarnId, gap: number): void {
  const yarns = studio.getState().open?.design.yarns ?? [];
  const from = yarns.findIndex((yarn) => yarn.id === id);
  // Bare cord stands below all yarns, and stays there.
  if (from >= 0) moveYarnTo(id, Math.min(gap > from ? gap - 1 : gap, yarns.length - 1));
}

/** Those that need a yarn are of no use for bare cord. */
const deeds: readonly (readonly [CommandId, label: string, needsYarn: boolean])[] = [
  ['add-yarn', 'Add…', false],
  ['change-yarn', 'Change…', true],
  ['replace-yarn', 'Replace…', true],
  ['merge-yarn', 'Merge…', true],
  ['ground-yarn', 'Ground', true],
  ['remove-yarn', 'Remove', true],
];

const moves: readonly (readonly [CommandId, sign: string])[] = [
  ['yarn-up', '↑'],
  ['yarn-down', '↓'],
];

/** What keys do while the list has the focus. */
const plainKeys: Readonly<Record<string, () => void>> = {
  ArrowUp: () => stepYarn(-1),
  ArrowDown: () => stepYarn(1),
};
const altKeys: Readonly<Record<string, () => void>> = {
  ArrowUp: () => runCommand('yarn-up'),
  ArrowDown: () => runCommand('yarn-down'),
};
