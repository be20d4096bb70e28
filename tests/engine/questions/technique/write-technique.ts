import { writeFileSync } from 'node:fs';
import { fitModel } from '../../text/learned/fit.ts';
import { written } from '../../text/learned/written.ts';
import { CLASSES, FIT, lessonOf } from './fit-technique.ts';
import { techniqueTexts } from './texts.ts';

// npx node tests/engine/questions/technique/write-technique.ts; whenever a technique, its texts, or what is read in them change.
const file = new URL('../../../../src/engine/questions/technique/weights.json', import.meta.url);
const texts = techniqueTexts();
const model = {
  origin: `fitted on ${texts.length} texts`,
  classes: CLASSES,
  ...written(fitModel(texts.map(lessonOf), FIT)),
};
writeFileSync(file, `${JSON.stringify(model, undefined, 2)}\n`);
