/** One variant: what it does otherwise. */
import type { Design } from '../../../shared/design/design.ts';
import type { Change, ChangeKind } from './change.ts';
import { ChangeFields } from './change-fields.tsx';
import { changeNames } from './change-words.ts';
import { newChange } from './new-change.ts';
import { changeVariant, removeVariant, type Variant } from './variants.ts';

interface VariantCardProps {
  readonly variant: Variant;
  /** 'A', 'B'… */
  readonly letter: string;
  readonly design: Design;
  /** How many strands hang at once as it is; null where that is not known yet. */
  readonly liveMax: number | null;
  /** Why it can't be made or planned; empty where it can. */
  readonly problem: string;
  /** What it comes to as well, 'variant A'; empty where it is like no other. */
  readonly same: string;
}

export function VariantCard({
  variant: { key, changes },
  letter,
  design,
  liveMax,
  problem,
  same,
}: VariantCardProps) {
  const kinds = Object.keys(changeNames) as ChangeKind[];
  const left = kinds.filter((kind) => changes.every((change) => change.kind !== kind));
  const put = (index: number, change: Change) => changeVariant(key, changes.with(index, change));
  return (
    <section className="variant" aria-label={`Variant ${letter}`}>
      <header>
        <h3>Variant {letter}</h3>
        <span className="spring" />
        <button
          type="button"
          className="plain"
          aria-label={`Remove variant ${letter}`}
          onClick={() => removeVariant(key)}
        >
          ✕
        </button>
      </header>
      {changes.map((change, index) => (
        <fieldset key={change.kind}>
          <legend>{changeNames[change.kind]}</legend>
          <ChangeFields change={change} design={design} onChange={(next) => put(index, next)} />
          <button
            type="button"
            className="plain"
            aria-label={`Leave out: ${changeNames[change.kind]}`}
            onClick={() => changeVariant(key, changes.toSpliced(index, 1))}
          >
            Leave out
          </button>
        </fieldset>
      ))}
      {problem && <p className="fault">{problem}</p>}
      {same && changes.length > 0 && (
        <p className="small" role="status">
          This comes to the same as {same}.
        </p>
      )}
      {left.length > 0 && (
        <label className="also">
          <span>{changes.length === 0 ? 'What if' : 'And also'}</span>
          <select
            value=""
            onChange={({ target }) =>
              changeVariant(key, [...changes, newChange(target.value as ChangeKind, design, liveMax)])
            }
          >
            <option value="" disabled>
              choose…
            </option>
            {left.map((kind) => (
              <option key={kind} value={kind}>
                {changeNames[kind]}
              </option>
            ))}
          </select>
        </label>
      )}
    </section>
  );
}
