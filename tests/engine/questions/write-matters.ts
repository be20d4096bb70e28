import { writeFileSync } from 'node:fs';
import { fitModel } from '../text/learned/fit.ts';
import { written } from '../text/learned/written.ts';
import { FIT, lessonOf, MATTERS } from './fit-matters.ts';
import { isLearned, matterTexts } from './matter-texts.ts';

// npx node tests/engine/questions/write-matters.ts; whenever a matter, the texts, or what is read in them change.
const file = new URL('../../../src/engine/questions/lye/topics/nearest/weights.json', import.meta.url);
const texts = matterTexts().filter(isLearned);
const model = {
  origin: `fitted on ${texts.length} texts`,
  classes: MATTERS,
  ...written(fitModel(texts.map(lessonOf), FIT)),
};
writeFileSync(file, `${JSON.stringify(model, undefined, 2)}\n`);
