/** The package's hardening, read back from the configuration that makes it. */
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire, isBuiltin } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { temporaryFolder } from '../temporary-folder.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (path: string) => readFileSync(join(root, path), 'utf8');

const configSchema = z.object({
  asar: z.literal(true),
  asarUnpack: z.array(z.string()),
  files: z.tuple([z.object({ filter: z.array(z.string()) })]),
  electronFuses: z.record(z.string(), z.boolean()),
  fileAssociations: z.array(z.object({ ext: z.string() })),
  mac: z.object({ target: z.array(z.string()), hardenedRuntime: z.boolean() }),
  win: z.object({ target: z.array(z.string()) }),
  linux: z.object({ target: z.array(z.string()) }),
});

/** What of electron-builder reads and checks its configuration; its types do not describe it. */
interface BuilderConfig {
  getConfig(folder: string, file: string | null, options: null): Promise<unknown>;
  validateConfiguration(config: unknown, log: { isEnabled: boolean; add(): void }): Promise<void>;
}
const requireOfBuilder = createRequire(createRequire(import.meta.url).resolve('electron-builder'));
const builder = requireOfBuilder('app-builder-lib/out/util/config/config') as BuilderConfig;
const given = await builder.getConfig(root, 'electron-builder.yml', null);
const config = configSchema.parse(given);
const packed = config.files[0].filter;

describe('the package', () => {
  // Names of the fuses: the documentation of @electron/fuses and electron-builder.
  it('turns off what would let others run code in it, and on what checks its own', () => {
    expect(config.electronFuses).toEqual({
      runAsNode: false,
      enableCookieEncryption: true,
      enableNodeOptionsEnvironmentVariable: false,
      enableNodeCliInspectArguments: false,
      enableEmbeddedAsarIntegrityValidation: true,
      onlyLoadAppFromAsar: true,
      loadBrowserProcessSpecificV8Snapshot: false,
      grantFileProtocolExtraPrivileges: false,
    });
  });

  it('is described as electron-builder understands it', async () => {
    const log = { isEnabled: false, add: () => {} };
    await builder.validateConfiguration(structuredClone(given), log);
    const misspelt = { ...(given as object), electronFuses: { ...config.electronFuses, runAsNod: false } };
    await expect(builder.validateConfiguration(misspelt, log)).rejects.toThrow('configuration.electronFuses');
  });

  it('holds what the main process opens, and opens designs', () => {
    const { main } = z.object({ main: z.string() }).parse(JSON.parse(read('package.json')));
    expect(main).toBe('dist/app/electron/main.cjs');
    expect(packed).toEqual(expect.arrayContaining(['package.json', 'dist/app/**', 'dist/renderer/**']));
    expect(config.fileAssociations.map(({ ext }) => ext)).toEqual(['larkrow']);
    expect([config.mac.target, config.win.target, config.linux.target].every((each) => each.length > 0)).toBe(
      true,
    );
  });
});

describe('the bundles of the desktop', () => {
  /** The packages that a bundle asks for when it is loaded. */
  function packagesOf(path: string): string[] {
    const loads = readFileSync(path, 'utf8').matchAll(/^\s*(?:var|const|let) .*\brequire\("([^"]+)"\)/gm);
    const names = [...loads].map(([, name = '']) => name);
    return [...new Set(names.filter((name) => !isBuiltin(name)))].sort();
  }

  it('ask in the sandbox for Electron alone, and outside it for packages with files of their own', () => {
    const folder = temporaryFolder();
    execFileSync(process.execPath, [join(root, 'build', 'bundle-app.mjs'), folder], { cwd: root });
    expect(packagesOf(join(folder, 'electron', 'preload.cjs'))).toEqual(['electron']);
    const needed = packagesOf(join(folder, 'electron', 'main.cjs'));
    expect(needed).toEqual(['@napi-rs/canvas', 'electron', 'pdfkit', 'sharp']);
    // The packager takes along what stands among the dependencies, and nothing else.
    const { dependencies } = z
      .object({ dependencies: z.record(z.string(), z.string()) })
      .parse(JSON.parse(read('package.json')));
    expect(Object.keys(dependencies)).toEqual(
      expect.arrayContaining(needed.filter((name) => name !== 'electron')),
    );
  });

  it('find the symbols’ face in the package', () => {
    expect(existsSync(join(root, 'shared', 'yarn', 'larkrow-symbols.otf'))).toBe(true);
    expect(packed).toContain('shared/yarn/larkrow-symbols.otf');
  });
});
