import { writeFileSync } from 'node:fs';
import type { Model } from '../../../src/engine/text/learned/model.ts';
import { fitModel } from '../text/learned/fit.ts';
import { hashesWritten, written } from '../text/learned/written.ts';
import { FIELD_FIT, FIT } from './fit-jobs.ts';
import { jobTexts, lessonsOf } from './job-texts.ts';

// npx node tests/engine/questions/write-jobs.ts; whenever the texts, or what finds names and amounts in them, change.
const folder = new URL('../../../src/engine/questions/learned/', import.meta.url);
const texts = jobTexts();
const { lessonOf, fieldLessonOf, known } = lessonsOf(texts);
const write = (file: string, model: Model) => {
  const whole = {
    origin: `fitted on ${texts.length} texts`,
    ...written(model),
    known: hashesWritten([...known].toSorted((a, b) => a - b)),
  };
  writeFileSync(new URL(file, folder), `${JSON.stringify(whole, undefined, 2)}\n`);
};
write('weights.json', fitModel(texts.map(lessonOf), FIT));
write('field/weights.json', fitModel(texts.map(fieldLessonOf), FIELD_FIT));
