/** What the two hosts do each in their own way. */
import type { FileKind } from '../../shared/bridge.ts';

/** The system's own dialogs. Null: the person changed their mind. Paths. */
export interface Dialogs {
  open(kind: FileKind): Promise<string | null>;
  saveAs(kind: FileKind, suggestedPath: string): Promise<string | null>;
  folder(): Promise<string | null>;
}

export interface StudioWindow {
  /** What the window holds, so that closing it can ask. */
  describe(title: string, unsaved: boolean): void;
  /** Closes it without asking. */
  close(): void;
}

export interface Host {
  readonly name: 'electron' | 'browser';
  readonly nativeMenu: boolean;
  /** Null where the studio shows its own chooser. */
  readonly dialogs: Dialogs | null;
  readonly window: StudioWindow;
  /** The system's own way to the bin; without it the studio does it as the platform's conventions say. */
  readonly moveToBin?: (path: string) => Promise<void>;
}
