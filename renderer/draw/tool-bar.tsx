/** The tools along the bottom, where the eye goes down to the yarn ends; their options above; in words what is under the pointer. */
import type { ReactNode } from 'react';
import { goesRight } from '../../shared/chart/chart.ts';
import type { CommandId } from '../../shared/commands.ts';
import { nextInRow } from '../../shared/tying/rows/next-in-row.ts';
import { runCommand } from '../shell/command-bus.ts';
import { commandById, keyLabel } from '../shell/keys.ts';
import { useToolbar } from '../shell/use-toolbar.ts';
import type { Tool } from '../store/state.ts';
import { useStudio } from '../store/use-studio.ts';
import { nameOfCode } from './code-names.ts';
import { ToolOptions } from './options/tool-options.tsx';
import { icons } from './tool-icons.tsx';

/** In groups, a rule between them. */
const tools: readonly (readonly (readonly [Tool, CommandId, label?: string])[])[] = [
  [['knot', 'tool-knot']],
  [
    ['line', 'tool-line'],
    ['rectangle', 'tool-rectangle'],
    ['ellipse', 'tool-ellipse'],
    ['fill', 'tool-fill'],
    ['text', 'tool-text'],
  ],
  [
    ['unpick', 'tool-unpick'],
    ['match', 'tool-match'],
    ['replace', 'tool-replace', 'Replace'],
  ],
  [
    ['patch', 'tool-patch'],
    ['motif', 'tool-motif'],
    ['border', 'tool-border'],
  ],
];

export function ToolBar() {
  const tool = useStudio((state) => state.tool);
  const canUndo = useStudio(
    ({ open }) => open !== null && (open.history.done.length > 0 || open.stroke !== null),
  );
  const canRedo = useStudio((state) => (state.open?.history.undone.length ?? 0) > 0);
  const history = useToolbar<HTMLDivElement>();
  const toolRow = useToolbar<HTMLDivElement>();
  return (
    <div className="tool-bar">
      <div className="upper">
        <ToolOptions />
        <div className="bar" role="toolbar" aria-label="History and zoom" {...history}>
          <SmallButton command="undo" icon={icons.undo} disabled={!canUndo} />
          <SmallButton command="redo" icon={icons.redo} disabled={!canRedo} />
          <SmallButton command="zoom-out" icon={icons.zoomOut} />
          <SmallButton command="zoom-in" icon={icons.zoomIn} />
          <SmallButton command="zoom-fit" icon={icons.zoomFit} />
          <SmallButton command="zoom-chart" icon={icons.zoomChart} />
        </div>
      </div>
      <div className="lower">
        <div className="bar" role="toolbar" aria-label="Tools" {...toolRow}>
          {tools.map((group, i) => (
            <span className="bar-group" key={group[0]![0]}>
              {i > 0 && <span className="bar-rule" />}
              {group.map(([name, command, label]) => (
                <ToolButton
                  key={name}
                  command={command}
                  icon={icons[name]}
                  label={label}
                  pressed={tool === name}
                />
              ))}
            </span>
          ))}
        </div>
        <UnderPointer />
      </div>
    </div>
  );
}

interface ButtonProps {
  command: CommandId;
  icon: ReactNode;
  label?: string | undefined;
  pressed?: boolean;
  disabled?: boolean;
}

function ToolButton({ command, icon, label, pressed }: ButtonProps) {
  const about = commandById(command);
  return (
    <button
      type="button"
      className="bar-button"
      aria-pressed={pressed}
      aria-label={about.label}
      title={titleOf(command)}
      onClick={(event) => {
        runCommand(command);
        // Chosen with the pointer, the tool is used on the chart next, and so are its keys.
        if (event.detail > 0) runCommand('go-chart');
      }}
    >
      {icon}
      <span className="bar-label">{label ?? about.label}</span>
    </button>
  );
}

/** One that can't be used keeps the focus: whoever undoes the last step by keys is not thrown out of the row. */
function SmallButton({ command, icon, disabled = false }: ButtonProps) {
  return (
    <button
      type="button"
      className="small-button"
      aria-label={commandById(command).label}
      aria-disabled={disabled}
      title={titleOf(command)}
      onClick={() => !disabled && runCommand(command)}
    >
      {icon}
    </button>
  );
}

function titleOf(command: CommandId): string {
  const about = commandById(command);
  const key = keyLabel(about);
  return key ? `${about.label} (${key})` : about.label;
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
