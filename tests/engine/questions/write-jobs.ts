import { writeFileSync } from 'node:fs';
import { hashesWritten, written } from '../../../src/engine/text/learned/written.ts';
import { fitModel } from '../text/learned/fit.ts';
import { FIT } from './fit-jobs.ts';
import { jobTexts, lessonsOf } from './job-texts.ts';

// npx node tests/engine/questions/write-jobs.ts; whenever the texts, or what finds names and amounts in them, change.
const file = new URL('../../../src/engine/questions/learned/weights.json', import.meta.url);
const texts = jobTexts();
const { lessons, known } = lessonsOf(texts);
const model = {
  origin: `fitted on ${texts.length} texts`,
  ...written(fitModel([...lessons.values()], FIT)),
  known: hashesWritten([...known].toSorted((a, b) => a - b)),
};
writeFileSync(file, `${JSON.stringify(model, undefined, 2)}\n`);
