/**
 * From old versions of the design file to ours, one step at a time. Step n takes a file of version n to n + 1: a pure
 * function that keeps the keys it does not know. It sees the file before anything is checked, so it must take any
 * value anywhere, and leave what it can't understand for the schema to refuse. A step that is
 * added here needs a stored example of the version it leaves, in tests/examples/vN/.
 */
import { DESIGN_VERSION } from './schema.ts';

export type JsonObject = { readonly [key: string]: unknown };
type Migration = (old: JsonObject) => JsonObject;
/** Steps by the version that they start from. */
export type Migrations = Readonly<Record<number, Migration>>;

export const migrations: Migrations = {
  /**
   * Version 2 knows a picture under the chart, fringes drawn by hand, and what a skein costs and how many are owned.
   * Only the picture must be told of: there is none.
   */
  1: (file) => ({ ...file, reference: null }),
};

/** True where `version` is ours or an older one that the steps lead on from. */
export function canMigrate(version: number, steps: Migrations = migrations): boolean {
  return version === DESIGN_VERSION || Object.hasOwn(steps, version);
}

/** The file as a file of our version. Throws where a step is missing: ask `canMigrate` first. */
export function migrate(file: JsonObject, version: number, steps: Migrations = migrations): JsonObject {
  let migrated = file;
  for (let from = version; from < DESIGN_VERSION; from++) {
    const step = steps[from];
    if (!step) throw new Error(`there is no step from version ${from} of the design file`);
    migrated = { ...step(migrated), version: from + 1 };
  }
  return migrated;
}
