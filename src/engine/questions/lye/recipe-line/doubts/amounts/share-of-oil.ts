import { knownOil } from '../../../../../batch/oils/find-oil.ts';

/** What stands between a share and its oil: "a third of the", "la mitad de eso de aceite de". */
const BETWEEN =
  /^(?: (?:of|in|de|del|en|the|my|that|those|this|el|la|los|las|mi|eso|ese|esa|oil|aceite|as|much))* (\p{L}+)(?: (\p{L}+))?/u;
/** "The coconut by half", "el coco a la mitad". */
const BEFORE = /(?:^|[ ,;])(?:(\p{L}+) )?(\p{L}+) (?:by|to|at|a|al|en|in)(?: (?:a|the|la|el|un|una))?$/u;

/**
 * Whether a share, `half` or `un tercio`, that a line names is of one oil in it and not of the whole recipe: what is told of the whole
 * then helps nobody. Takes what `plainWords` gives. Pure.
 */
export function isShareOfOneOil(line: string, share: string): boolean {
  const at = line.indexOf(share);
  if (at === -1) return false;
  const [, first = '', second = ''] = BETWEEN.exec(line.slice(at + share.length)) ?? [];
  const [, former = '', latter = ''] = BEFORE.exec(line.slice(0, at).trimEnd()) ?? [];
  const names = [first, `${first} ${second}`.trim(), latter, `${former} ${latter}`.trim()];
  return names.some(name => name !== '' && knownOil(name) !== undefined);
}
