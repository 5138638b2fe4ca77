/**
 * Questions to the person. `ask` shows one modal dialog and answers when it closes; dialogs stack. The platform's
 * own `dialog` element keeps the focus inside, closes on Escape and gives the focus back.
 */
import { type ReactNode, useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

interface Shown {
  readonly key: number;
  readonly body: ReactNode;
  readonly wide: boolean;
  readonly label: string;
  readonly leave: string;
  readonly dismiss: () => void;
}

const dialogs = createStore<{ shown: readonly Shown[] }>(() => ({ shown: [] }));
let nextKey = 1;

interface Ask<T> {
  label: string;
  wide?: boolean;
  /** What its cross is called. A dialog that only shows something is closed; nothing is cancelled. */
  leave?: 'Cancel' | 'Close';
  body: (answer: (value: T) => void) => ReactNode;
}

/** What the person answered; null where the dialog was dismissed. */
export function ask<T>({ label, wide = false, leave = 'Cancel', body }: Ask<T>): Promise<T | null> {
  return new Promise((resolve) => {
    const key = nextKey++;
    const answer = (value: T | null) => {
      dialogs.setState(({ shown }) => ({ shown: shown.filter((each) => each.key !== key) }));
      resolve(value);
    };
    const shown: Shown = { key, label, wide, leave, body: body(answer), dismiss: () => answer(null) };
    dialogs.setState((state) => ({ shown: [...state.shown, shown] }));
  });
}

/** True while any dialog is open, so that keys don't reach the screen behind it. */
export function isAsking(): boolean {
  return dialogs.getState().shown.length > 0;
}

/** A question with a few answers as buttons. The first answer is the main one. */
export function choose<T extends string>(
  title: string,
  text: string,
  answers: readonly { value: T; label: string }[],
): Promise<T | null> {
  return ask<T>({
    label: title,
    body: (answer) => (
      <div className="sheet">
        <h2>{title}</h2>
        <p>{text}</p>
        <div className="answers">
          {answers.toReversed().map(({ value, label }) => (
            <button
              key={value}
              type="button"
              className={value === answers[0]?.value ? 'main' : ''}
              data-first={value === answers[0]?.value || undefined}
              onClick={() => answer(value)}
            >
              {label}
            </button>
          ))}
        </div>
      </div>
    ),
  });
}

export function Dialogs() {
  const shown = useStore(dialogs, (state) => state.shown);
  return shown.map(({ key, ...each }) => <Modal key={key} {...each} />);
}

function Modal({ body, wide, label, leave, dismiss }: Omit<Shown, 'key'>) {
  const element = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const dialog = element.current;
    const before = document.activeElement;
    dialog?.showModal();
    dialog?.querySelector<HTMLElement>('[data-first]')?.focus();
    return () => {
      dialog?.close();
      // React may have taken the dialog away already, and with it the focus that it would have given back.
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <dialog
      ref={element}
      className={wide ? 'wide' : ''}
      aria-label={label}
      onCancel={(event) => {
        event.preventDefault();
        dismiss();
      }}
    >
      <button type="button" className="plain dismiss" aria-label={leave} onClick={dismiss}>
        ✕
      </button>
      {body}
    </dialog>
  );
}
