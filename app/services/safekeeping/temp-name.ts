/**
 * Names of the files that a save writes beside its target before it renames them over it. The name tells which process
 * of which machine was writing, so that one left by a kill can be told from one that is being written now.
 */
import { createHash, randomBytes } from 'node:crypto';
import { hostname } from 'node:os';

const pattern = /^\.larkrow-([0-9a-f]{6})-([0-9]+)-[0-9a-f]{12}\.part$/;

const machine = createHash('sha256').update(hostname()).digest('hex').slice(0, 6);

export function tempName(): string {
  return `.larkrow-${machine}-${process.pid}-${randomBytes(6).toString('hex')}.part`;
}

/** Who was writing the temporary file of this name; null where it is no name of ours. */
export function tempWriter(name: string): { readonly here: boolean; readonly processId: number } | null {
  const [, where, processId] = pattern.exec(name) ?? [];
  return where && processId ? { here: where === machine, processId: Number(processId) } : null;
}
