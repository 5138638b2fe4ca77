/**
 * Recolour: what each yarn of the picture becomes, with the picture as it is and as it will be side by side. All changes
 * are made at once, so that two yarns can change places, and are one step of the history.
 */
import { useEffect, useMemo, useState } from 'react';
import { codeOf, type YarnId } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import type { YarnLook } from '../../../shared/design/yarn-edits.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { lookOfStashYarn } from '../../../shared/yarn/stash.ts';
import { ask } from '../../shell/dialogs.tsx';
import { tellProblem } from '../../shell/notices.tsx';
import { change, endStroke } from '../../store/changing.ts';
import { chooseCode, studio } from '../../store/studio.ts';
import { useStudio } from '../../store/use-studio.ts';
import { Ball } from './ball.tsx';
import { ChartPicture } from './chart-picture.tsx';
import { type Becomes, recolourEdit } from './recolour-edit.ts';
import { readStash, useStash } from './stash/stash-store.ts';
import { symbolTexts } from './yarn-deeds.ts';
import { yarnsInUse } from './yarns-in-use.ts';

type Wanted = ReadonlyMap<YarnId, Becomes>;

export async function recolourDesign(): Promise<void> {
  endStroke();
  const design = studio.getState().open?.design;
  if (!design) return;
  const wanted = await ask<Wanted>({
    label: 'Recolour',
    wide: true,
    body: (answer) => <RecolourSheet design={design} answer={answer} />,
  });
  if (!wanted) return;
  const edit = recolourEdit(design, symbolTexts, wanted);
  if (!edit.ok) return tellProblem(edit.problem.sentence);
  if (!edit.value) return;
  const chosen = wanted.get(`y${studio.getState().open?.code ?? 0}`);
  change('Recolour', edit.value);
  if (chosen?.from === 'design') chooseCode(codeOf(chosen.id));
}

interface RecolourSheetProps {
  readonly design: Design;
  readonly answer: (wanted: Wanted) => void;
}

function RecolourSheet({ design, answer }: RecolourSheetProps) {
  const [wanted, setWanted] = useState<Wanted>(new Map());
  const stash = useStash();
  useEffect(() => {
    readStash();
  }, []);
  const fromStash = useMemo(() => (stash?.yarns ?? []).map(lookOfStashYarn), [stash]);
  const used = useMemo(() => yarnsInUse(design), [design]);
  const count = [...wanted].filter(([id, becomes]) => becomes.from === 'stash' || becomes.id !== id).length;
  const want = (id: YarnId, becomes: Becomes) => setWanted((before) => new Map(before).set(id, becomes));
  return (
    <form
      className="sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (count > 0) answer(wanted);
      }}
    >
      <h2>Recolour</h2>
      <div className="recolour">
        <Mapping {...{ design, used, fromStash, wanted, want }} />
        <Pictures {...{ design, wanted }} />
      </div>
      <div className="answers">
        <button type="button" disabled={count === 0} onClick={() => setWanted(new Map())}>
          Start again
        </button>
        <button type="submit" className="main" disabled={count === 0}>
          {count === 0 ? 'Recolour' : count === 1 ? 'Recolour 1 yarn' : `Recolour ${count} yarns`}
        </button>
      </div>
    </form>
  );
}

interface MappingProps {
  readonly design: Design;
  readonly used: readonly Yarn[];
  readonly fromStash: readonly YarnLook[];
  readonly wanted: Wanted;
  readonly want: (id: YarnId, becomes: Becomes) => void;
}

function Mapping({ design, used, fromStash, wanted, want }: MappingProps) {
  return (
    <ul className="mapping">
      {used.map((yarn, at) => {
        const becomes = becomesNow(wanted, yarn.id);
        const look = lookOf(design, becomes);
        const back = becomes.from === 'design' && becomes.id !== yarn.id ? becomes.id : null;
        return (
          <li key={yarn.id}>
            <Ball color={yarn.color} symbol={yarn.symbol} />
            <span className="one-line" title={yarn.name}>
              {yarn.name}
            </span>
            <span aria-hidden="true">→</span>
            <Ball color={look.color} symbol={null} />
            <select
              data-first={at === 0 || undefined}
              aria-label={`${yarn.name} becomes`}
              value={optionOf(becomes, fromStash)}
              onChange={(event) => want(yarn.id, becomesOf(event.target.value, fromStash))}
            >
              <optgroup label="Yarns of this design">
                {design.yarns.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {id === yarn.id ? `${name} (as it is)` : name}
                  </option>
                ))}
              </optgroup>
              {fromStash.length > 0 && (
                <optgroup label="Your stash">
                  {[...fromStash.entries()].map(([i, { name }]) => (
                    <option key={i} value={`stash ${i}`}>
                      {name}
                    </option>
                  ))}
                </optgroup>
              )}
            </select>
            <button
              type="button"
              disabled={back === null}
              title="The two yarns change places"
              aria-label={`${yarn.name} and ${look.name} change places`}
              onClick={() => back && want(back, { from: 'design', id: yarn.id })}
            >
              ⇄
            </button>
          </li>
        );
      })}
    </ul>
  );
}

function Pictures({ design, wanted }: { design: Design; wanted: Wanted }) {
  const chart = useStudio((state) => state.open?.chart);
  const { pitchMm, rowHeightMm } = gaugeOf(design);
  const aspect = (design.columns * pitchMm) / (design.rows * rowHeightMm);
  const before = useMemo(() => new Map(design.yarns.map(({ id, color }) => [codeOf(id), color])), [design]);
  const after = useMemo(
    () => new Map(design.yarns.map(({ id }) => [codeOf(id), lookOf(design, becomesNow(wanted, id)).color])),
    [design, wanted],
  );
  if (!chart) return null;
  return (
    <div className="before-and-after">
      <figure>
        <ChartPicture {...{ chart, aspect }} colors={before} label="The picture as it is" />
        <figcaption className="quiet small">As it is</figcaption>
      </figure>
      <figure>
        <ChartPicture {...{ chart, aspect }} colors={after} label="The picture recoloured" />
        <figcaption className="quiet small">Recoloured</figcaption>
      </figure>
    </div>
  );
}

function becomesNow(wanted: Wanted, id: YarnId): Becomes {
  return wanted.get(id) ?? { from: 'design', id };
}

function lookOf({ yarns }: Design, becomes: Becomes): YarnLook {
  return becomes.from === 'stash' ? becomes.look : yarns.find(({ id }) => id === becomes.id)!;
}

function optionOf(becomes: Becomes, fromStash: readonly YarnLook[]): string {
  return becomes.from === 'design' ? becomes.id : `stash ${fromStash.indexOf(becomes.look)}`;
}

function becomesOf(value: string, fromStash: readonly YarnLook[]): Becomes {
  const [, place] = value.split(' ');
  if (place !== undefined) return { from: 'stash', look: fromStash[Number(place)]! };
  return { from: 'design', id: value as YarnId };
}
