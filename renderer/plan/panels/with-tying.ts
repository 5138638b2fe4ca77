/** From the design's settings for tying to the figures that are written, and back. */
import type { TyingSettings } from '../../../shared/design/schema.ts';
import type { Units } from '../../../shared/units/units.ts';
import type { TyingField } from './tying-fields.ts';

/** A setting as it is shown; null where it may be left empty, and is. One that old files lack counts as its least. */
export function writtenTying(tying: TyingSettings, field: TyingField, units: Units): number | null {
  const value = tying[field.key];
  if (value !== undefined) return field.shown(value, units);
  return field.empty ? null : field.shown(field.min, units);
}

/** The settings with one of them as it was written; null leaves it empty. */
export function withTying(
  tying: TyingSettings,
  { key, kept, min, max }: TyingField,
  written: number | null,
  units: Units,
): TyingSettings {
  // Figures are shown rounded, so the least and the most that are shown may lie a little beyond what the file holds.
  if (written !== null) return { ...tying, [key]: Math.min(max, Math.max(min, kept(written, units))) };
  const { [key]: _, ...rest } = tying;
  return rest as TyingSettings;
}
