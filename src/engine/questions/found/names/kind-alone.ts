import type { Words } from '../words-of.ts';

const KINDS: ReadonlyMap<string, string> = new Map([
  ['clay', 'clay'],
  ['clays', 'clay'],
  ['arcilla', 'arcilla'],
  ['arcillas', 'arcilla'],
  ['oxide', 'iron oxide'],
  ['oxides', 'iron oxide'],
  ['oxido', 'oxido de hierro'],
  ['oxidos', 'oxido de hierro'],
]);

/** What is named by its kind alone, of which the answer asks which one: "my clay keeps clumping". */
export const kindAlone = ({ words }: Words): string | undefined =>
  words.map(word => KINDS.get(word)).find(kind => kind !== undefined);
