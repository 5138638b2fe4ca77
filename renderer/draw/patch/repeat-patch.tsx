/** The chosen patch repeated as tiles over the whole chart, shown on the chart while the figures are chosen. */
import { useEffect, useState } from 'react';
import { liftBlock } from '../../../shared/chart/patch/lift-block.ts';
import { type Tiling, tiledStrips } from '../../../shared/chart/patch/tiled-strips.ts';
import { paintStrips } from '../../../shared/chart/tools/strips.ts';
import { EMPTY } from '../../../shared/design/codes.ts';
import { layerOf } from '../../../shared/design/design.ts';
import { ask } from '../../shell/dialogs.tsx';
import { Choices, NumberField } from '../../shell/fields.tsx';
import { tellProblem } from '../../shell/notices.tsx';
import { beginStroke, dropStroke, endStroke, keepStroke, stroke } from '../../store/changing.ts';
import { studio } from '../../store/studio.ts';
import { whyNotDraw } from '../hand/why-not-draw.ts';
import { chosenPatch } from './chosen-patch.ts';

type Spacing = Pick<Tiling, 'columnGap' | 'rowGap' | 'drop'>;

export async function repeatPatch(): Promise<void> {
  endStroke();
  const chosen = chosenPatch();
  if (!chosen) return;
  const { open, mask } = chosen;
  const fault = whyNotDraw(open);
  if (fault) return tellProblem(fault);
  const block = liftBlock(layerOf(open.design, open.layer).rows, mask);
  if (block.cells.every((code) => code === EMPTY))
    return tellProblem('Nothing of the patch lies on the layer drawn on. Choose the layer that holds it.');
  const { top, left } = mask.bounds!;
  const { columns, rows } = open.design;
  const area = { top: 0, left: 0, bottom: rows - 1, right: columns - 1 };
  const show = (spacing: Spacing) => {
    const strips = tiledStrips(block, area, { at: { row: top, column: left }, ...spacing });
    stroke(paintStrips(open.layer, strips, open.design), true);
  };
  beginStroke('Repeat a patch', true);
  const isMine = studio.getState().open?.stroke;
  const isSure = await ask<true>({
    label: 'Repeat the patch',
    body: (answer) => <RepeatSheet show={show} answer={answer} />,
  });
  if (studio.getState().open?.stroke !== isMine) return;
  if (isSure) keepStroke();
  else dropStroke();
}

function RepeatSheet({ show, answer }: { show: (spacing: Spacing) => void; answer: (sure: true) => void }) {
  const [spacing, setSpacing] = useState<Spacing>({ columnGap: 0, rowGap: 0, drop: 'none' });
  const want = (change: Partial<Spacing>) => setSpacing((before) => ({ ...before, ...change }));
  useEffect(() => show(spacing), [show, spacing]);
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        answer(true);
      }}
    >
      <h2>Repeat the patch</h2>
      <p>Over the whole chart, on the layer drawn on.</p>
      <div className="fields">
        <NumberField
          label="Cords between"
          value={spacing.columnGap}
          min={0}
          max={1000}
          whole
          first
          onChange={(columnGap) => want({ columnGap })}
        />
        <NumberField
          label="Rows between"
          value={spacing.rowGap}
          min={0}
          max={2000}
          whole
          onChange={(rowGap) => want({ rowGap })}
        />
        <Choices
          label="Columns of tiles"
          value={spacing.drop}
          options={[
            { value: 'none', label: 'level' },
            { value: 'half', label: 'every other one half lower (half drop)' },
          ]}
          onChange={(drop) => want({ drop })}
        />
      </div>
      <div className="answers">
        <button type="submit" className="main">
          Repeat
        </button>
      </div>
    </form>
  );
}
