import { refuse } from '../../src/engine/refusal.ts';
import { checkColourant } from '../../src/engine/stability/check-colourant.ts';
import { type OtherUse, otherUseOf } from '../../src/engine/stability/legal-share.ts';
import { permittedSummary } from '../../src/engine/stability/permitted-summary.ts';
import { inNoList } from '../../src/presenting/check-dose.ts';
import { partName } from '../../src/presenting/ingredient-name.ts';
import type { Jar } from '../../src/records/shelf/jars/jar.ts';
import { meantByItem } from '../../src/records/shelf/meant.ts';
import type { Words } from '../../src/words/index.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    /** Listed for another use than soap in the US and not in the EU, or in no list: no spoons are told. */
    'colour-not-for-soap': { readonly name: string; readonly use: OtherUse | 'none' };
  }
}

/**
 * What the law says of a colour before any number: where it may not be used and where it may, or how little it allows.
 * Throws a Refusal `colour-not-for-soap` for one that neither law lists for soap.
 */
export function lawOf({ colourant, item }: Jar, say: Words): readonly string[] {
  const { components } = item ? meantByItem(item).report : checkColourant(colourant);
  const part = components.find(one => otherUseOf(one));
  const use = part && otherUseOf(part);
  if (part && use) {
    const { eu } = permittedSummary(components);
    if (eu.standing !== 'listed' && eu.standing !== 'limited')
      refuse('colour-not-for-soap', { name: partName(part), use });
    return [say.checking.soapElsewhere({ name: partName(part), use })];
  }
  const unlisted = components.find(inNoList);
  if (unlisted) refuse('colour-not-for-soap', { name: partName(unlisted), use: 'none' });
  const { legal } = colourant;
  if (!legal) return [];
  const percent = Number((legal.share * 100).toPrecision(3));
  return [say.checking.legalMost({ ...legal, percent, verdict: '' }).trim()];
}
