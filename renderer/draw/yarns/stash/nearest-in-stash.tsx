/** Which yarns of the stash come nearest to the chosen yarn's colour, and how near. */
import type { Yarn } from '../../../../shared/design/schema.ts';
import { LOOK_ALIKE_DELTA_E } from '../../../../shared/yarn/colour-difference.ts';
import { emptyStash, matchStash, type StashYarn } from '../../../../shared/yarn/stash.ts';
import { Ball } from '../ball.tsx';
import { skeinsInWords } from './skeins-in-words.ts';
import { takeInstead } from './stash-deeds.ts';

interface NearestProps {
  /** Undefined where bare cord is chosen. */
  readonly chosen: Yarn | undefined;
  readonly yarns: readonly StashYarn[];
  readonly say: (words: string) => void;
}

export function NearestInStash({ chosen, yarns, say }: NearestProps) {
  if (!chosen || yarns.length === 0) return null;
  const matches = matchStash({ ...emptyStash, yarns: [...yarns] }, chosen.color);
  return (
    <section className="nearest" aria-label="Nearest in colour">
      <h3>Nearest in colour to</h3>
      <p className="with-ball">
        <Ball color={chosen.color} symbol={chosen.symbol} />
        <span className="one-line" title={chosen.name}>
          {chosen.name}
        </span>
      </p>
      <ul>
        {matches.map(({ index, yarn, difference }) => (
          <li key={index}>
            <Ball color={yarn.color} symbol={null} />
            <span className="words">
              <span className="one-line name" title={yarn.name}>
                {yarn.name}
              </span>
              <span className="quiet small">
                {nearness(difference)}, {skeinsInWords(yarn.ownedSkeins)}
              </span>
            </span>
            <button
              type="button"
              aria-label={`Use ${yarn.name} instead of ${chosen.name}`}
              onClick={() => say(takeInstead(chosen.id, yarn))}
            >
              Use instead
            </button>
          </li>
        ))}
      </ul>
      <p className="quiet small">
        “Use instead” gives this design’s yarn the name, colour and skein of the one you own; every knot of it
        changes colour.
      </p>
    </section>
  );
}

/** In words, since nobody knows a difference of 12 by sight. Four times what can be told apart is plainly another colour. */
function nearness(difference: number): string {
  if (difference < LOOK_ALIKE_DELTA_E) return 'looks the same';
  return difference < 4 * LOOK_ALIKE_DELTA_E ? 'near' : 'another colour';
}
