import type { ColourJar } from '../../src/engine/colour/jars/jar.ts';
import type { Preview } from '../../src/engine/colour/mixing/preview.ts';
import type { WrittenBase } from '../../src/engine/colour/reading/base-text.ts';
import type { DoseAnswer } from '../../src/engine/dosing/request.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import { knownAs } from '../../src/presenting/colour/jars.ts';
import type { Jar } from '../../src/records/shelf/jars/jar.ts';
import type { Words } from '../../src/words/index.ts';

/** Everything a preview is told from. */
export type PreviewView = {
  readonly jars: readonly Jar[];
  readonly colours: readonly ColourJar[];
  readonly answer: DoseAnswer;
  readonly base: WrittenBase;
  readonly gelled: boolean;
  readonly portion: string;
  readonly preview: Preview;
  readonly measures: Measures;
  readonly say: Words;
};

export const namesOf = ({ jars, say }: PreviewView): readonly string[] => jars.map(jar => knownAs(jar, say));
