/** Each yarn's strands, pieces and need; a yarn's name chooses its first strand. */
import { codeOf } from '../../../shared/design/codes.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';
import { useStudio } from '../../store/use-studio.ts';
import { chooseStrand } from '../plan-deeds.ts';
import { nothingTied } from '../plan-words.ts';
import { shownPlan, usePlans } from '../plans/plans.ts';

export function YarnsPart() {
  const planned = usePlans(shownPlan);
  const units = useStudio((state) => state.settings.units);
  if (!planned) return null;
  const { tables, materials } = planned;
  if (materials.yarns.length === 0) return <p className="quiet">{nothingTied('take')}</p>;
  return (
    <table className="figures">
      <caption className="unseen">Strands, pieces and yarn to cut of each yarn</caption>
      <thead>
        <tr>
          <th scope="col">Yarn</th>
          <th scope="col">Strands</th>
          <th scope="col">Pieces</th>
          <th scope="col">To cut</th>
        </tr>
      </thead>
      <tbody>
        {materials.yarns.map(({ id, name, strands, pieces, cutMm }) => (
          <tr key={id}>
            <th scope="row">
              <button
                type="button"
                className="plain"
                aria-label={`${name}: choose its first strand`}
                title={name}
                onClick={() => chooseStrand(tables.strands.yarn.indexOf(codeOf(id)))}
              >
                <span className="two-lines">{name}</span>
              </button>
            </th>
            <td>{strands.toLocaleString('en')}</td>
            <td>{pieces.toLocaleString('en')}</td>
            <td>{formatYarnLength(cutMm, units, { enough: true })}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
