/** Before anything is cut: what a looser hand would still need, and a reserve in each piece that holds it off. */
import { useStudio } from '../../store/use-studio.ts';
import { loosePiecesWords, takesMoreIfLoose } from '../money/need-words.ts';
import { changeTying } from '../plan-deeds.ts';
import { shownPlan, usePlans } from '../plans/plans.ts';

/** Value from memory: what two days of one hand differ by. */
const RESERVE = 0.03;

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
          onClick={() => changeTying('Change the reserve', { ...tying, reserveShare: RESERVE })}
        >
          Keep 3 % of each piece free
        </button>
      )}
    </div>
  );
}
