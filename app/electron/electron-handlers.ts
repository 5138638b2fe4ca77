/**
 * The main process's end of the bridge. Each message is taken only from the studio's own page, in the top frame of its
 * window; its content is checked where every host checks it, in `answer`.
 */
import { type AnswerOptions, answer } from '../services/answer.ts';
import { channels } from './channels.ts';
import { isPageAddress } from './page-address.ts';

/** What is used of Electron's events, so that tests can drive this without it. */
export interface IpcEvent {
  readonly senderFrame: { readonly url: string; readonly parent: unknown } | null;
  readonly sender: {
    readonly id: number;
    isDestroyed(): boolean;
    send(channel: string, ...args: unknown[]): void;
  };
}

export interface IpcMainPart {
  handle(channel: string, listener: (event: IpcEvent, ...args: unknown[]) => Promise<unknown>): void;
  on(channel: string, listener: (event: IpcEvent, ...args: unknown[]) => void): unknown;
}

export function electronHandlers(ipcMain: IpcMainPart, answers: AnswerOptions): void {
  const running = new Map<string, AbortController>();
  const keyOf = ({ sender }: IpcEvent, callId: number) => `${sender.id} ${callId}`;
  ipcMain.handle(channels.call, async (event, callId, verb, args) => {
    if (!isOurs(event)) {
      answers.log(`A call from ${event.senderFrame?.url ?? 'nowhere'} was refused.`);
      return { ok: false, problem: { code: 'refused', sentence: 'Only the studio itself may ask this.' } };
    }
    if (typeof callId !== 'number' || running.has(keyOf(event, callId))) {
      return {
        ok: false,
        problem: { code: 'bad-arguments', sentence: 'This call has no number of its own.' },
      };
    }
    const stop = new AbortController();
    running.set(keyOf(event, callId), stop);
    try {
      return await answer(answers, verb, args, {
        signal: stop.signal,
        onProgress: (progress) => {
          if (!event.sender.isDestroyed()) event.sender.send(channels.progress, callId, progress);
        },
      });
    } finally {
      running.delete(keyOf(event, callId));
    }
  });
  ipcMain.on(channels.cancel, (event, callId) => {
    if (isOurs(event) && typeof callId === 'number') running.get(keyOf(event, callId))?.abort();
  });
}

/** A frame within the page, or a page from anywhere else, has no business here. */
function isOurs({ senderFrame }: IpcEvent): boolean {
  return senderFrame !== null && senderFrame.parent === null && isPageAddress(senderFrame.url);
}
