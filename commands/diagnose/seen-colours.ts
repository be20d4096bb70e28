import type { Block } from '../../src/conversation/reply.ts';
import { nearestWord } from '../../src/engine/colour/reading/plain-words.ts';
import type { CauseId } from '../../src/engine/flaws/cause.ts';
import type { Diagnosis } from '../../src/engine/flaws/diagnosis.ts';
import type { PhotoShown } from '../../src/records/flaws/index.ts';
import type { Words } from '../../src/words/index.ts';

/** Causes that are about the colour itself: there it helps to see what colour the bar has become. */
const ABOUT_COLOUR: ReadonlySet<CauseId> = new Set([
  'alkali-unstable-colourant',
  'base-colour-cast',
  'dye-bleed',
  'fragrance-discolouration',
  'gel-shifted-colour',
  'light-fade',
  'muddy-swirl',
  'overdosed-colour',
  'underdosed-colour',
  'unsuitable-colour',
  'vanillin-browning',
]);
const MOST_COLOURS = 3;
/** A part of the face smaller than this is no colour of it. */
const LEAST_SHARE = 0.08;

/** The main colours on the photo, each with its patch, where a likely cause is about colour or none is known; nothing elsewhere. */
export function seenColours(
  { causes: [first], cantTell }: Pick<Diagnosis, 'causes' | 'cantTell'>,
  photo: Pick<PhotoShown, 'colours' | 'whiteReference'> | undefined,
  say: Words,
): readonly Block[] {
  const isAboutColour = first !== undefined && ABOUT_COLOUR.has(first.id);
  if (!photo || !(isAboutColour || cantTell === 'nothing-known')) return [];
  const shown = photo.colours.filter(({ share }) => share >= LEAST_SHARE).slice(0, MOST_COLOURS);
  if (shown.length === 0) return [];
  const measures = shown.map(({ lab, hex, plusMinus }) => ({
    label: say.flaws.seenColour({ word: say.colour.names[nearestWord(lab)] }),
    value: say.flaws.seenHex({ hex, plusMinus: Math.round(plusMinus) }),
    hex,
  }));
  return [{ kind: 'measures', measures }];
}
