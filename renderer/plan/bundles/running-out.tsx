/** Before anything is cut: what a looser hand would still need, and a reserve in each piece that holds it off. */
import { usualReserveShare } from '../../../shared/tying/usual-reserve.ts';
import { formatPercent } from '../../../shared/units/percent.ts';
import { useStudio } from '../../store/use-studio.ts';
import { loosePiecesWords, takesMoreIfLoose } from '../money/need-words.ts';
import { changeTying } from '../plan-deeds.ts';
import { shownPlan, usePlans } from '../plans/plans.ts';

export function RunningOut() {
  const yarns = usePlans((state) => shownPlan(state)?.materials.yarns);
  const units = useStudio((state) => state.settings.units);
  const tying = useStudio((state) => state.open?.design.tying);
  if (!yarns || !tying || !takesMoreIfLoose(yarns)) return null;
  return (
    <div className="spare-pieces">
      <p>How much yarn a knot takes is sure only to its ±. {loosePiecesWords(yarns, units)}</p>
      {(tying.reserveShare ?? 0) === 0 && (
        <button
          type="button"
          onClick={() => changeTying('Change the reserve', { ...tying, reserveShare: usualReserveShare })}
        >
          Keep {formatPercent(usualReserveShare)} of each piece free
        </button>
      )}
    </div>
  );
}
