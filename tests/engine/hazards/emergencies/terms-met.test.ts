import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ABOUT_WORDS } from '../../../../src/engine/hazards/emergencies/evidence/lexicon-about.ts';
import { WHAT_WORDS } from '../../../../src/engine/hazards/emergencies/evidence/lexicon-what.ts';
import { WHO_WORDS } from '../../../../src/engine/hazards/emergencies/evidence/lexicon-who.ts';
import { EMERGENCY_GRAMMAR } from '../../../../src/engine/hazards/emergencies/lexicon/grammar.ts';
import { HARM_WORDS } from '../../../../src/engine/hazards/emergencies/lexicon/harm.ts';
import { SCENE_WORDS } from '../../../../src/engine/hazards/emergencies/lexicon/scene.ts';
import { stem, tokenise } from '../../../../src/engine/text/tokens.ts';
import { drawn, WHOLE } from '../../../walk.ts';

/** How a text is looked up: its words by stem, so that an ending needs no row of its own. */
const keysOf = (text: string): string =>
  ` ${tokenise(text)
    .map(token => stem(token.text))
    .join(' ')} `;

const strings = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : value && typeof value === 'object'
      ? Object.values(value).flatMap(strings)
      : [];

/** All texts by which emergencies are taught and held, one a line. */
const met = readdirSync(import.meta.dirname)
  .filter(file => /^emergencies-.*\.json$/.test(file))
  .flatMap(file => strings(JSON.parse(readFileSync(join(import.meta.dirname, file), 'utf8'))))
  .map(keysOf)
  .join('\n');

/** How large a share of the terms of each lexicon is met in no text: it may only go down. */
const UNMET = [
  ['harm', HARM_WORDS, 0.454],
  ['scene', SCENE_WORDS, 0.36],
  ['who', WHO_WORDS, 0.437],
  ['what', WHAT_WORDS, 0.232],
  ['about', ABOUT_WORDS, 0.204],
  ['grammar', EMERGENCY_GRAMMAR, 0.471],
] as const;
const MOST = 150;
/** Four sigma of a sample of that size, at most: 4 * sqrt(0.25 / 150). The whole walk has none. */
const SCATTER = WHOLE ? 0 : 0.164;

test.each(UNMET)('most terms of %s are met in a text that teaches or holds', (name, lexicon, most) => {
  const all = Object.entries(lexicon).flatMap(([, phrases]) => phrases.split(', '));
  const terms = drawn(all, MOST, name);
  const unmet = terms.filter(term => !met.includes(keysOf(term)));
  console.log(`${name}: ${unmet.length} of ${terms.length} are met nowhere`);
  expect(unmet.length / terms.length).toBeLessThanOrEqual(most + SCATTER);
});
