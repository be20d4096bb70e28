import { writeFileSync } from 'node:fs';
import { fitModel } from '../../text/learned/fit.ts';
import { written } from '../../text/learned/written.ts';
import { FIT } from './fit-emergencies.ts';
import { learnedTexts, lessonOf } from './learned-texts.ts';

// npx node tests/engine/hazards/emergencies/write-learned.ts; after write-weights.ts and whenever a lexicon or a text changes.
const file = new URL('../../../../src/engine/hazards/emergencies/learned/weights.json', import.meta.url);
const texts = learnedTexts();
const model = { origin: `fitted on ${texts.length} texts`, ...written(fitModel(texts.map(lessonOf), FIT)) };
writeFileSync(file, `${JSON.stringify(model, undefined, 2)}\n`);
