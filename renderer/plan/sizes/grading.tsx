/** The same cells in another cord and yarn: everything before and after, and one step that does it. */
import { useMemo, useState } from 'react';
import { graded, gradeEdit } from '../../../shared/gauge/graded.ts';
import { formatThickness } from '../../../shared/units/thickness.ts';
import { ThicknessField } from '../../new-design/thickness-field.tsx';
import { tell } from '../../shell/notices.tsx';
import { change } from '../../store/changing.ts';
import type { OpenDesign } from '../../store/state.ts';
import { useStudio } from '../../store/use-studio.ts';
import { CompareTable } from '../what-if/compare-table.tsx';
import { gradeRows } from '../what-if/figure-rows.ts';
import { useWeighed, weighable } from '../what-if/use-weighed.ts';
import { WeighProgress } from '../what-if/weigh-progress.tsx';

export function Grading({ open: { design, chart } }: { open: OpenDesign }) {
  const units = useStudio((state) => state.settings.units);
  const groundMm = design.yarns.find(({ id }) => id === design.ground)!.diameterMm;
  /** Null: as it is. */
  const [cordMm, setCordMm] = useState<number | null>(null);
  const [yarnMm, setYarnMm] = useState<number | null>(null);
  const cordDiameterMm = cordMm ?? design.cord.diameterMm;
  const yarnDiameterMm = yarnMm ?? groundMm;
  const isSame = cordDiameterMm === design.cord.diameterMm && yarnDiameterMm === groundMm;
  const made = useMemo(
    () => graded(design, { cordDiameterMm, yarnDiameterMm }),
    [design, cordDiameterMm, yarnDiameterMm],
  );
  const all = useMemo(
    () =>
      made.ok && !isSame ? [weighable('before', design, chart), weighable('after', made.value, chart)] : [],
    [design, chart, made, isSame],
  );
  const weighing = useWeighed(all);
  const thicknesses = `${formatThickness(cordDiameterMm, units)} cord and ${formatThickness(yarnDiameterMm, units)} yarn`;
  const grade = () => {
    const edit = gradeEdit(design, { cordDiameterMm, yarnDiameterMm });
    if (!edit.ok || isSame) return;
    change(`Grade to ${thicknesses}`, edit.value);
    setCordMm(null);
    setYarnMm(null);
    tell(`Graded to ${thicknesses}. Undo takes it back.`);
  };
  return (
    <section aria-label="Grading">
      <h3>Grade to another cord or yarn</h3>
      <p className="leaf-note">
        The cells stay; sizes and lengths follow. Other yarns become thicker or thinner in the same
        proportion. Your tension is kept, until you tie a swatch with the new cord. Prices and what you own
        are of the old cord and yarns, and are left out.
      </p>
      <form
        className="size-form"
        onSubmit={(event) => {
          event.preventDefault();
          grade();
        }}
      >
        <div className="figure-fields">
          <ThicknessField label="Cord" mm={cordDiameterMm} minMm={0.5} maxMm={30} onChange={setCordMm} />
          <ThicknessField
            label="Ground yarn"
            mm={yarnDiameterMm}
            minMm={0.2}
            maxMm={20}
            onChange={setYarnMm}
          />
        </div>
        {!made.ok && <p className="fault">{made.problem.sentence}</p>}
        {made.ok && !isSame && (
          <>
            <WeighProgress weighing={weighing} />
            {weighing.problems.after && <p className="fault">{weighing.problems.after}</p>}
            <CompareTable
              caption="The hanging before and after grading"
              rows={gradeRows}
              weighing={weighing}
              columns={[
                { key: 'before', head: 'Before' },
                { key: 'after', head: `With ${thicknesses}` },
              ]}
            />
          </>
        )}
        <div>
          <button type="submit" disabled={!made.ok || isSame}>
            Grade the design
          </button>
        </div>
      </form>
    </section>
  );
}
