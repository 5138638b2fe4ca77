/** Stores the JSON Schema of the design file beside the zod schema that it is made from: npx tsx build/publish-schema.mjs */
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { designJsonSchema } from '../shared/design/design-json-schema.ts';

const target = fileURLToPath(new URL('../shared/design/larkrow-design.schema.json', import.meta.url));
const biome = fileURLToPath(new URL('../node_modules/@biomejs/biome/bin/biome', import.meta.url));
writeFileSync(target, `${JSON.stringify(designJsonSchema(), null, 2)}\n`);
execFileSync(process.execPath, [biome, 'format', '--write', target], { stdio: 'inherit' });
