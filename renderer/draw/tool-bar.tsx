/** The tools along the bottom, where the eye goes down to the yarn ends; and in words what is under the pointer. */
import type { ReactNode } from 'react';
import { goesRight } from '../../shared/chart/chart.ts';
import type { CommandId } from '../../shared/commands.ts';
import { nextInRow } from '../../shared/tying/next-in-row.ts';
import { runCommand } from '../shell/command-bus.ts';
import { commandById, keyLabel } from '../shell/keys.ts';
import type { Tool } from '../store/state.ts';
import { useStudio } from '../store/use-studio.ts';
import { nameOfCode } from './code-names.ts';
import { icons } from './tool-icons.tsx';

const tools: readonly (readonly [Tool, CommandId])[] = [
  ['knot', 'tool-knot'],
  ['line', 'tool-line'],
  ['rectangle', 'tool-rectangle'],
  ['fill', 'tool-fill'],
  ['unpick', 'tool-unpick'],
  ['match', 'tool-match'],
];

export function ToolBar() {
  const tool = useStudio((state) => state.tool);
  const symbols = useStudio((state) => state.views.cells === 'symbols');
  const canUndo = useStudio((state) => (state.open?.history.done.length ?? 0) > 0);
  const canRedo = useStudio((state) => (state.open?.history.undone.length ?? 0) > 0);
  return (
    <div className="tool-bar" role="toolbar" aria-label="Tools">
      {tools.map(([name, command]) => (
        <BarButton key={name} command={command} icon={icons[name]} pressed={tool === name} />
      ))}
      <span className="bar-rule" />
      <BarButton command="undo" icon={icons.undo} disabled={!canUndo} />
      <BarButton command="redo" icon={icons.redo} disabled={!canRedo} />
      <span className="bar-rule" />
      <BarButton command="symbols" icon={icons.symbols} pressed={symbols} />
      <BarButton command="zoom-out" icon={icons.zoomOut} />
      <BarButton command="zoom-in" icon={icons.zoomIn} />
      <BarButton command="zoom-fit" icon={icons.zoomFit} label="Whole" />
      <UnderPointer />
    </div>
  );
}

interface BarButtonProps {
  command: CommandId;
  icon: ReactNode;
  label?: string;
  pressed?: boolean;
  disabled?: boolean;
}

function BarButton({ command, icon, label, pressed, disabled = false }: BarButtonProps) {
  const { label: name, ...rest } = commandById(command);
  const key = keyLabel({ label: name, ...rest });
  return (
    <button
      type="button"
      className="bar-button"
      aria-pressed={pressed}
      aria-label={name}
      disabled={disabled}
      title={key ? `${name} (${key})` : name}
      onClick={() => runCommand(command)}
    >
      {icon}
      <span className="bar-label">{label ?? name}</span>
    </button>
  );
}

function UnderPointer() {
  const open = useStudio((state) => state.open);
  const under = useStudio((state) => state.under);
  if (!open || !under) return <p className="under quiet">Move over the chart to read its rows</p>;
  const { chart, design } = open;
  const arrow = goesRight(chart.startCorner, under.row) ? '→' : '←';
  const code = chart.cells[under.row * chart.columns + under.column]!;
  const next = nextInRow(chart, under).slice(0, 2);
  const words = next.map(({ code: each, count }) => `${count} ${nameOfCode(design, each)}`);
  return (
    <div className="under">
      <p className="one-line">
        <strong>
          Row {under.row + 1} {arrow}, cord {under.column + 1}
        </strong>{' '}
        · {nameOfCode(design, code)}
      </p>
      <p className="one-line quiet">
        {words.length === 0 ? 'the last yarn in this row' : `next in this row: ${words.join(', then ')}`}
      </p>
    </div>
  );
}
