import type { Studio } from '../studio.ts';
import { moveToBin } from './move-to-bin.ts';

/** Moves a file to the person's bin: by the system's own way, where the host has one. Rejects as the file layer does. */
export async function bin({ files, host, home, platform, now }: Studio, path: string): Promise<void> {
  if (host.moveToBin) await host.moveToBin(path);
  else await moveToBin(files, { path, bin: home.bin, platform, now: now() });
}
