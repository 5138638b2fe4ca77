/** A picture becomes a chart: choose it, crop it, say how many cords and which yarns, and go on drawing. */
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Answer, Place } from '../../shared/bridge.ts';
import type { Design } from '../../shared/design/design.ts';
import { limits } from '../../shared/design/limits.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import { gaugeOf } from '../../shared/gauge/gauge.ts';
import { designFromPicture } from '../../shared/picture/design-from-picture.ts';
import { rowsFor } from '../../shared/picture/rows-for.ts';
import { counted } from '../../shared/units/counted.ts';
import { mayLeave } from '../flows/opening.ts';
import { fileToOpen } from '../flows/places.ts';
import { host } from '../host.ts';
import { ask } from '../shell/dialogs.tsx';
import { Choices, NumberField, TextField } from '../shell/fields.tsx';
import { tellProblem } from '../shell/notices.tsx';
import { withProgress } from '../shell/progress.tsx';
import { openDesign, studio } from '../store/studio.ts';
import { type Crop, CropBox } from './crop-box.tsx';
import './picture.css';

type Look = Answer<'picture.look'>;

export async function pictureToChart(): Promise<void> {
  const picture = await fileToOpen('picture');
  if (picture) await pictureByPlace(picture);
}

/** For a picture that was dropped or pasted as well. */
export async function pictureByPlace(picture: Place): Promise<void> {
  const look = await host().call('picture.look', { picture: picture.handle });
  if (!look.ok) return tellProblem(look.problem.sentence);
  if (!(await mayLeave())) return;
  const design = await ask<Design>({
    label: 'Picture to chart',
    wide: true,
    body: (answer) => <PictureSheet picture={picture} look={look.value} answer={answer} />,
  });
  if (design) openDesign(design, null);
}

interface SheetProps {
  picture: Place;
  look: Look;
  answer: (design: Design) => void;
}

function PictureSheet({ picture, look, answer }: SheetProps) {
  const open = studio.getState().open;
  const [title, setTitle] = useState(
    picture.name.replace(/\.[^.]+$/, '').slice(0, limits.nameChars) || 'Picture',
  );
  const [columns, setColumns] = useState(60);
  const [from, setFrom] = useState<'picture' | 'design'>('picture');
  const [count, setCount] = useState(8);
  const [crop, setCrop] = useState<Crop>({ x: 0, y: 0, width: look.widthPx, height: look.heightPx });
  const preview = usePictureUrl(look.preview);

  const template = useMemo(() => {
    if (open) return open.design;
    const { designer, startCorner } = studio.getState().settings;
    return newDesign({ title, columns: 1, rows: 1, designer, startCorner });
  }, [open, title]);
  const gauge = gaugeOf(template);
  const rows = rowsFor(columns, crop.width, crop.height, gauge.pitchMm, gauge.rowHeightMm);
  const fault = faultOf(title, rows);

  const make = async () => {
    const request = {
      picture: picture.handle,
      crop,
      columns,
      rows,
      pitchMm: gauge.pitchMm,
      rowHeightMm: gauge.rowHeightMm,
      ground: template.yarns.find(({ id }) => id === template.ground),
      yarns: from === 'picture' ? { count } : { from: [...template.yarns] },
    };
    const made = await withProgress('Turning the picture into knots', (options) =>
      host().call('picture.chart', request, options),
    );
    if (made.ok) answer(designFromPicture({ title: title.trim(), ...made.value, template }));
    else if (made.problem.code !== 'cancelled') tellProblem(made.problem.sentence);
  };

  return (
    <form
      className="sheet picture-sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (!fault) make();
      }}
    >
      <h2>Picture to chart</h2>
      <div className="two">
        <CropBox look={look} url={preview} crop={crop} onChange={setCrop} />
        <div className="fields">
          <TextField label="Title" value={title} onChange={setTitle} max={limits.nameChars} first />
          <NumberField
            label="Cords"
            value={columns}
            min={1}
            max={limits.columns}
            whole
            hint={`${counted(rows, 'row keeps', 'rows keep')} its proportions`}
            onChange={setColumns}
          />
          <Choices
            label="Yarns"
            value={from}
            options={[
              { value: 'picture', label: 'chosen from the picture' },
              { value: 'design', label: open ? 'those of the open design' : 'those of a new design' },
            ]}
            onChange={setFrom}
          />
          {from === 'picture' && (
            <NumberField
              label="How many yarns"
              value={count}
              min={1}
              max={limits.yarns}
              whole
              onChange={setCount}
              hint="fewer colours, fewer loose ends"
            />
          )}
          <CropFields look={look} crop={crop} onChange={setCrop} />
        </div>
      </div>
      <p className="fault" role="alert">
        {fault}
      </p>
      <div className="answers">
        <button type="submit" className="main" disabled={fault !== ''}>
          Make the chart
        </button>
      </div>
    </form>
  );
}

/** The crop in figures, for the keyboard and for exactness: pixels of the picture. */
function CropFields({ look, crop, onChange }: { look: Look; crop: Crop; onChange: (crop: Crop) => void }) {
  const field = (label: string, key: keyof Crop, min: number, max: number) => (
    <NumberField
      label={label}
      value={crop[key]}
      min={min}
      max={max}
      whole
      onChange={(value) => onChange({ ...crop, [key]: value })}
    />
  );
  return (
    <details className="whole">
      <summary>
        Crop: {crop.width} × {crop.height} of {look.widthPx} × {look.heightPx} pixels
      </summary>
      <div className="fields">
        {field('From the left', 'x', 0, look.widthPx - crop.width)}
        {field('From the top', 'y', 0, look.heightPx - crop.height)}
        {field('Width', 'width', 1, look.widthPx - crop.x)}
        {field('Height', 'height', 1, look.heightPx - crop.y)}
      </div>
      <button
        type="button"
        onClick={() => onChange({ x: 0, y: 0, width: look.widthPx, height: look.heightPx })}
      >
        The whole picture
      </button>
    </details>
  );
}

function faultOf(title: string, rows: number): string {
  if (!title.trim()) return 'Give the design a title.';
  if (rows > limits.rows)
    return `That is ${rows} rows; ${limits.rows} are the most. Take fewer cords or crop it.`;
  return '';
}

function usePictureUrl(bytes: Uint8Array): string {
  const url = useRef('');
  if (!url.current) url.current = URL.createObjectURL(new Blob([bytes.slice()], { type: 'image/png' }));
  useEffect(() => () => URL.revokeObjectURL(url.current), []);
  return url.current;
}
