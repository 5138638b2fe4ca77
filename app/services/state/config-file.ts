/**
 * The settings file in a folder, `config.json`, as plain Node keeps it; Electron's own store writes the same file.
 * A damaged one is set aside, never deleted, and the defaults are used.
 */
import { existsSync, mkdirSync, readFileSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import Conf from 'conf';
import type { KeyValueStore } from './key-value-store.ts';

export const CONFIG_NAME = 'config';

export function openConfig(folder: string): KeyValueStore {
  setDamagedAside(folder);
  const conf = new Conf<Record<string, unknown>>({
    cwd: folder,
    configName: CONFIG_NAME,
    accessPropertiesByDotNotation: false,
  });
  return { get: (key) => conf.get(key), set: (key, value) => conf.set(key, value) };
}

/** The name that a damaged file was given; null where it is sound or absent. Called before a store is opened. */
export function setDamagedAside(folder: string): string | null {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${CONFIG_NAME}.json`);
  if (!existsSync(path) || isObject(readFileSync(path, 'utf8'))) return null;
  let n = 1;
  while (existsSync(join(folder, `${CONFIG_NAME} damaged ${n}.json`))) n++;
  const name = `${CONFIG_NAME} damaged ${n}.json`;
  renameSync(path, join(folder, name));
  return name;
}

function isObject(text: string): boolean {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && !Array.isArray(value);
  } catch {
    return false;
  }
}
