import { writeFileSync } from 'node:fs';
import { fitWeights } from './fit-weights.ts';
import { fittedTexts, samplesOf } from './fitted-texts.ts';

// npx node tests/engine/hazards/emergencies/write-weights.ts
const texts = fittedTexts();
const file = new URL('../../../../src/engine/hazards/emergencies/evidence/weights.json', import.meta.url);
const weights = fitWeights(texts.flatMap(text => samplesOf(text)));
writeFileSync(
  file,
  `${JSON.stringify({ origin: `from memory, fitted on ${texts.length} texts`, weights }, null, 2)}\n`,
);
