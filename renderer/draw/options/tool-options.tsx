/** The options of the tool in the hand, above the tools: in one line, or two where the window is narrow. */
import { type ReactNode, useEffect } from 'react';
import { type FriezeGroup, friezeGroups } from '../../../shared/chart/borders/frieze-groups.ts';
import { type AlphabetId, alphabetsById } from '../../../shared/chart/text/alphabets.ts';
import { cellText } from '../../../shared/chart/text/cell-text.ts';
import { limits } from '../../../shared/design/limits.ts';
import type { Tool } from '../../store/state.ts';
import { changeDrawing } from '../../store/studio.ts';
import { useStudio } from '../../store/use-studio.ts';
import { borderMotif, drawBorder, followBorder } from '../hand/border-preview.ts';
import { FigureField } from './figure-field.tsx';
import { Chooser, CommandButton, Toggle } from './option-parts.tsx';
import { textSizeInWords } from './text-size-in-words.ts';
import './options.css';

export function ToolOptions() {
  const tool = useStudio((state) => state.tool);
  return (
    <fieldset className="tool-options">
      <legend className="unseen">Options of the tool</legend>
      {options[tool]()}
    </fieldset>
  );
}

const options: Record<Tool, () => ReactNode> = {
  knot: () => <NibOptions />,
  unpick: () => <NibOptions />,
  line: () => <NibOptions hint="Shift: straight" />,
  rectangle: () => <ShapeOptions />,
  ellipse: () => <ShapeOptions />,
  fill: () => <FillOptions />,
  match: () => <p className="quiet">Press a cell: its yarn is chosen.</p>,
  replace: () => <ReplaceOptions />,
  text: () => <TextOptions />,
  patch: () => <PatchOptions />,
  motif: () => <MotifOptions />,
  border: () => <BorderOptions />,
};

function Width() {
  const width = useStudio((state) => state.drawing.width);
  return (
    <FigureField
      label="Width"
      unit={width === 1 ? 'cell' : 'cells'}
      value={width}
      min={1}
      max={limits.nibCells}
      onChange={(cells) => changeDrawing({ width: cells })}
    />
  );
}

function NibOptions({ hint = 'Shift before you press: a straight line' }: { hint?: string }) {
  const nib = useStudio((state) => state.drawing.nib);
  return (
    <>
      <Width />
      <Chooser
        label="Shape"
        value={nib}
        choices={{ round: 'Round', square: 'Square', 'flat-across': 'Flat across', 'flat-down': 'Flat down' }}
        onChange={(shape) => changeDrawing({ nib: shape })}
      />
      <p className="quiet one-line">{hint}</p>
    </>
  );
}

function ShapeOptions() {
  const filled = useStudio((state) => state.drawing.filled);
  return (
    <>
      <Chooser
        label="Draw"
        value={filled ? 'filled' : 'outline'}
        choices={{ filled: 'Filled', outline: 'Outline' }}
        onChange={(how) => changeDrawing({ filled: how === 'filled' })}
      />
      {!filled && <Width />}
      <p className="quiet one-line">Shift: as wide as high</p>
    </>
  );
}

function FillOptions() {
  const fill = useStudio((state) => state.drawing.fill);
  return (
    <Chooser
      label="Fill"
      value={fill}
      choices={{
        touching: 'The same yarn, touching',
        everywhere: 'The same yarn, everywhere',
        'to-boundary': 'Up to what is drawn on any layer',
      }}
      onChange={(scope) => changeDrawing({ fill: scope })}
    />
  );
}

function ReplaceOptions() {
  const where = useStudio((state) => state.drawing.replaceIn);
  return (
    <>
      <Chooser
        label="Replace in"
        value={where}
        choices={{ chart: 'The whole chart', layer: 'This layer', patch: 'The patch' }}
        onChange={(replaceIn) => changeDrawing({ replaceIn })}
      />
      <p className="quiet one-line">Press a cell: its yarn gives way to the chosen one.</p>
    </>
  );
}

function TextOptions() {
  const { text, alphabet, align } = useStudio((state) => state.drawing);
  const columns = useStudio((state) => state.open?.design.columns ?? 1);
  const rows = useStudio((state) => state.open?.design.rows ?? 1);
  const set = cellText(text, alphabet, { align });
  return (
    <>
      <label className="option">
        Text
        <textarea
          rows={Math.min(3, text.split('\n').length)}
          value={text}
          maxLength={200}
          placeholder="What shall be knotted"
          onChange={(event) => changeDrawing({ text: event.target.value })}
        />
      </label>
      <Chooser
        label="Alphabet"
        value={alphabet}
        choices={alphabetLabels}
        onChange={(id) => changeDrawing({ alphabet: id })}
      />
      {text.includes('\n') && (
        <Chooser
          label="Lines"
          value={align}
          choices={{ start: 'Left', middle: 'Middle', end: 'Right' }}
          onChange={(how) => changeDrawing({ align: how })}
        />
      )}
      <p className="quiet one-line" role="status">
        {set.missing.length > 0
          ? `This alphabet has no ${set.missing.slice(0, 3).join(' ')}`
          : text.trim() === ''
            ? 'Write, then press where its middle shall be'
            : textSizeInWords(set, { columns, rows })}
      </p>
    </>
  );
}

const alphabetLabels = Object.fromEntries(
  Object.entries(alphabetsById).map(([id, { label, capRows }]) => [
    id,
    `${label}, capitals of ${capRows} rows`,
  ]),
) as Record<AlphabetId, string>;

function PatchOptions() {
  const patchBy = useStudio((state) => state.drawing.patchBy);
  const bounds = useStudio((state) => state.patch?.mask.bounds);
  return (
    <>
      <Chooser
        label="Choose by"
        value={patchBy}
        choices={{ rectangle: 'Rectangle', freehand: 'Freehand', yarn: 'Yarn' }}
        onChange={(by) => changeDrawing({ patchBy: by })}
      />
      {bounds ? (
        <>
          <CommandButton command="flip-left-right" label="Flip ↔" />
          <CommandButton command="flip-top-bottom" label="Flip ↕" />
          <CommandButton command="turn-right" label="Turn" />
          <CommandButton command="copy" label="Copy" />
          <CommandButton command="repeat-patch" label="Repeat…" />
          <CommandButton command="keep-motif" label="Keep as motif…" />
          <CommandButton command="let-go-patch" label="Done" />
          <p className="quiet one-line">
            {bounds.right - bounds.left + 1} × {bounds.bottom - bounds.top + 1} · arrows move it
          </p>
        </>
      ) : (
        <p className="quiet one-line">Drag over cells; Shift adds, Alt takes away</p>
      )}
    </>
  );
}

function MotifOptions() {
  const motifs = useStudio((state) => state.motifs);
  const { motif, motifTurn, motifFlipped, motifUpsideDown } = useStudio((state) => state.drawing);
  if (!motifs || motifs.length === 0)
    return <p className="quiet">No motif is kept yet. Choose cells with Patch and keep them as a motif.</p>;
  const isKnown = motifs.some(({ id }) => id === motif);
  return (
    <>
      <Chooser
        label="Motif"
        value={isKnown ? (motif ?? '') : ''}
        choices={{
          ...(isKnown ? {} : { '': 'Choose one' }),
          ...Object.fromEntries(
            motifs.map(({ id, name, columns, rows }) => [id, `${name} (${columns} × ${rows.length})`]),
          ),
        }}
        onChange={(id) => changeDrawing({ motif: id || null })}
      />
      <Chooser
        label="Turned"
        value={motifTurn}
        choices={{ 'as-kept': 'As kept', right: 'Right', half: 'Half', left: 'Left' }}
        onChange={(turn) => changeDrawing({ motifTurn: turn })}
      />
      <Toggle label="Flip ↔" on={motifFlipped} onChange={(on) => changeDrawing({ motifFlipped: on })} />
      <Toggle label="Flip ↕" on={motifUpsideDown} onChange={(on) => changeDrawing({ motifUpsideDown: on })} />
      {isKnown && (
        <>
          <CommandButton command="rename-motif" label="Rename…" />
          <CommandButton command="remove-motif" label="Remove…" />
        </>
      )}
    </>
  );
}

const friezeLabels = Object.fromEntries(friezeGroups.map(({ group, label }) => [group, label])) as Record<
  FriezeGroup,
  string
>;

function BorderOptions() {
  const border = useStudio((state) => state.drawing.border);
  const motifs = useStudio((state) => state.motifs);
  // A border that is shown or not, and for what reason, follows from these too.
  useStudio((state) => state.patch);
  useStudio((state) => state.open?.layer);
  useEffect(followBorder, []);
  const want = (change: Partial<typeof border>) => changeDrawing({ border: { ...border, ...change } });
  const edges = ['top', 'right', 'bottom', 'left'] as const;
  return (
    <>
      <Chooser
        label="Motif"
        value={border.motif ?? ''}
        choices={{ '': 'The patch', ...Object.fromEntries((motifs ?? []).map(({ id, name }) => [id, name])) }}
        onChange={(id) => want({ motif: id || null })}
      />
      <Chooser
        label="Frieze"
        value={border.group}
        choices={friezeLabels}
        onChange={(group) => want({ group })}
      />
      {edges.map((edge) => (
        <Toggle
          key={edge}
          label={edge.charAt(0).toUpperCase() + edge.slice(1)}
          on={border.edges[edge]}
          onChange={(on) => want({ edges: { ...border.edges, [edge]: on } })}
        />
      ))}
      <FigureField
        label="Inset"
        value={border.insetCells}
        min={0}
        max={999}
        onChange={(insetCells) => want({ insetCells })}
      />
      <Toggle
        label="Mitred corners"
        on={border.corners === 'mitred'}
        onChange={(on) => want({ corners: on ? 'mitred' : 'open' })}
      />
      <button type="button" className="main" onClick={drawBorder}>
        Draw it
      </button>
      {!borderMotif() && <p className="quiet one-line">Choose a motif, or cells of this layer with Patch</p>}
    </>
  );
}
