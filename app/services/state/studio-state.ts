/**
 * What the studio remembers between two starts. A value that makes no sense is taken as never set, key by key, so that
 * one bad value costs only itself.
 */
import { z } from 'zod';
import { type Settings, settingsSchema } from '../../../shared/bridge.ts';
import type { KeyValueStore } from './key-value-store.ts';

const RECENT_COUNT = 12;

export interface StudioState {
  settings(): Settings;
  /** Changes some settings, and says what all of them are then. */
  change(settings: { readonly [K in keyof Settings]?: Settings[K] | undefined }): Settings;
  /** Null until the person chooses a folder. */
  shelfFolder(): string | null;
  keepShelfFolder(path: string): void;
  /** True from the first start on. */
  demosGiven(): boolean;
  noteDemosGiven(): void;
  /** Paths of designs, latest first. */
  recent(): string[];
  noteRecent(path: string): void;
  /** A design that has another name now, or none. */
  moveRecent(from: string, to: string | null): void;
  clearRecent(): void;
}

export function studioState(store: KeyValueStore): StudioState {
  const recent = () => read(store, 'recent', z.array(z.string())) ?? [];
  const setRecent = (paths: readonly string[]) => {
    try {
      store.set('recent', paths.slice(0, RECENT_COUNT));
    } catch {
      // A list of recent designs that can't be kept is no reason to refuse the design itself.
    }
  };
  const settings = () => soundSettings(store.get('settings'));
  return {
    settings,
    change(changes) {
      const next = settingsSchema.parse({ ...settings(), ...known(changes) });
      store.set('settings', next);
      return next;
    },
    shelfFolder: () => read(store, 'shelfFolder', z.string().min(1)),
    keepShelfFolder: (path) => store.set('shelfFolder', path),
    demosGiven: () => read(store, 'demosGiven', z.boolean()) ?? false,
    noteDemosGiven: () => store.set('demosGiven', true),
    recent,
    noteRecent: (path) => setRecent([path, ...recent().filter((each) => each !== path)]),
    moveRecent: (from, to) => {
      const moved = recent().map((each) => (each === from ? to : each));
      setRecent(moved.filter((each) => each !== null));
    },
    clearRecent: () => setRecent([]),
  };
}

function read<T>(store: KeyValueStore, key: string, schema: z.ZodType<T>): T | null {
  const parsed = schema.safeParse(store.get(key));
  return parsed.success ? parsed.data : null;
}

function soundSettings(stored: unknown): Settings {
  const entries = typeof stored === 'object' && stored !== null ? Object.entries(stored) : [];
  const sound = entries.filter(
    ([key, value]) =>
      Object.hasOwn(settingsSchema.shape, key) &&
      settingsSchema.partial().safeParse({ [key]: value }).success,
  );
  return settingsSchema.parse(Object.fromEntries(sound));
}

/** Keys with a value: a key that says nothing changes nothing. */
function known(changes: object): object {
  return Object.fromEntries(Object.entries(changes).filter(([, value]) => value !== undefined));
}
