import { checkColourant } from '../../src/engine/stability/check-colourant.ts';
import { notForSoap } from '../../src/presenting/check.ts';
import type { Jar } from '../../src/records/shelf/jar.ts';
import { meantByItem } from '../../src/records/shelf/meant.ts';
import type { Words } from '../../src/words/index.ts';

/** What the law says of a colour before any number: that it is listed for something else, or how little it allows. */
export function lawOf({ colourant, item }: Jar, say: Words): readonly string[] {
  const { components } = item ? meantByItem(item).report : checkColourant(colourant);
  const elsewhere = notForSoap({ components }, '', say);
  if (elsewhere) return [elsewhere];
  const { legal } = colourant;
  if (!legal) return [];
  const percent = Number((legal.share * 100).toPrecision(3));
  return [say.checking.legalMost({ ...legal, percent, verdict: '' }).trim()];
}
