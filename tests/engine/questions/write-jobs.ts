import { writeFileSync } from 'node:fs';
import { written } from '../../../src/engine/text/learned/written.ts';
import { fitModel } from '../text/learned/fit.ts';
import { FIT } from './fit-jobs.ts';
import { jobTexts, lessonOf } from './job-texts.ts';

// npx node tests/engine/questions/write-jobs.ts; whenever the texts, or what finds names and amounts in them, change.
const file = new URL('../../../src/engine/questions/learned/weights.json', import.meta.url);
const texts = jobTexts();
const model = { origin: `fitted on ${texts.length} texts`, ...written(fitModel(texts.map(lessonOf), FIT)) };
writeFileSync(file, `${JSON.stringify(model, undefined, 2)}\n`);
