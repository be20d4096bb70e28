import { writeFileSync } from 'node:fs';
import { toldOfFlaws, wordingOf, writeWording } from './learned.ts';

// npx node tests/engine/flaws/write-wording.ts
const file = new URL('../../../src/engine/flaws/reading/wording.json', import.meta.url);
writeFileSync(file, `${JSON.stringify(writeWording(wordingOf(toldOfFlaws())), null, 2)}\n`);
