/** One layer in the panel: its thumbnail and name choose it, beside them it is shown or hidden, locked or unlocked. */
import { memo, type PointerEvent as ReactPointerEvent, useEffect, useRef } from 'react';
import type { Layer } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import { lockOrUnlock, nameLayer, showOrHide } from './layer-deeds.ts';
import { layerIcons } from './layer-icons.tsx';
import { LayerThumbnail } from './layer-thumbnail.tsx';
import { nameInWords, placeInWords } from './layer-words.ts';
import { endRenaming, startRenaming } from './renaming.ts';

interface LayerRowProps {
  readonly layer: Layer;
  /** From 0 at the bottom. */
  readonly at: number;
  readonly count: number;
  readonly isChosen: boolean;
  readonly isRenamed: boolean;
  /** Classes that show where a dragged layer would be put. */
  readonly mark: string;
  readonly colors: Uint32Array;
  readonly size: { readonly width: number; readonly height: number };
  readonly press: (event: ReactPointerEvent, layer: string) => void;
  readonly choose: (layer: string) => void;
}

export const LayerRow = memo(function LayerRow(props: LayerRowProps) {
  const { layer, at, count, isChosen, isRenamed, mark, colors, size, press, choose } = props;
  const row = useRef<HTMLLIElement>(null);
  const main = useRef<HTMLButtonElement>(null);
  const name = nameInWords(layer.name);
  useEffect(() => {
    if (isChosen || isRenamed) row.current?.scrollIntoView({ block: 'nearest' });
  }, [isChosen, isRenamed]);
  // Of all the rows' buttons only those of the chosen one are reached with Tab; arrows lead to the others.
  const tabIndex = isChosen ? 0 : -1;
  const thumbnail = <LayerThumbnail rows={layer.rows} colors={colors} {...size} />;

  return (
    <li
      ref={row}
      className={`layer${isChosen ? ' chosen' : ''}${layer.visible ? '' : ' unseen-layer'}${mark}`}
      onPointerDown={(event) => press(event, layer.id)}
    >
      {isRenamed ? (
        <span className="layer-main">
          {thumbnail}
          <NameField
            name={layer.name}
            done={(text, byKey) => {
              if (text !== null && !nameLayer(layer.id, text)) return;
              endRenaming();
              // Ended by a click elsewhere, the focus is where the person wants it.
              if (byKey) requestAnimationFrame(() => main.current?.focus());
            }}
          />
        </span>
      ) : (
        <button
          ref={main}
          type="button"
          className="layer-main"
          aria-pressed={isChosen}
          aria-label={placeInWords(layer, at, count)}
          title={name}
          tabIndex={tabIndex}
          onClick={() => choose(layer.id)}
          onDoubleClick={() => startRenaming(layer.id)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' || !isChosen) return;
            event.preventDefault();
            startRenaming(layer.id);
          }}
        >
          {thumbnail}
          <span className="one-line name">{name}</span>
        </button>
      )}
      <button
        type="button"
        className="plain"
        aria-pressed={!layer.visible}
        aria-label={`Hide ${name}`}
        title={layer.visible ? 'Shown. Hide it' : 'Hidden. Show it'}
        tabIndex={tabIndex}
        onPointerDown={(event) => event.stopPropagation()}
        onClick={() => showOrHide(layer)}
      >
        {layerIcons[layer.visible ? 'shown' : 'hidden']}
      </button>
      <button
        type="button"
        className="plain"
        aria-pressed={layer.locked}
        aria-label={`Lock ${name}`}
        title={layer.locked ? 'Locked. Unlock it' : 'Unlocked. Lock it'}
        tabIndex={tabIndex}
        onPointerDown={(event) => event.stopPropagation()}
        onClick={() => lockOrUnlock(layer)}
      >
        {layerIcons[layer.locked ? 'locked' : 'unlocked']}
      </button>
    </li>
  );
});

interface NameFieldProps {
  readonly name: string;
  /** Told the name that was written, or null where the old one stays, and whether a key ended the writing. */
  readonly done: (name: string | null, byKey: boolean) => void;
}

function NameField({ name, done }: NameFieldProps) {
  const field = useRef<HTMLInputElement>(null);
  const isDone = useRef(false);
  useEffect(() => field.current?.select(), []);
  const end = (text: string | null, byKey: boolean) => {
    if (isDone.current) return;
    // An empty name is refused, and the field stays.
    isDone.current = text === null || text.trim() !== '';
    done(text, byKey);
  };
  return (
    <input
      ref={field}
      aria-label="Name of the layer"
      defaultValue={name}
      maxLength={limits.nameChars}
      onPointerDown={(event) => event.stopPropagation()}
      onBlur={(event) => end(event.target.value.trim() === '' ? null : event.target.value, false)}
      onKeyDown={(event) => {
        if (event.key === 'Enter') end(event.currentTarget.value, true);
        else if (event.key === 'Escape') end(null, true);
        else return;
        event.preventDefault();
        event.stopPropagation();
      }}
    />
  );
}
