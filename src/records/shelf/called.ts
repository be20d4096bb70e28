import type { Colourant } from '../../engine/colourants/colourant.ts';
import { byLanguage, quotedIn } from '../../engine/language.ts';
import type { ShelfItem } from './shelf.ts';

/** What its owner calls a jar, in quotes, in place of the catalogue's names. */
export const calledByOwner = ({ name }: Pick<ShelfItem, 'name'>): Colourant['names'] =>
  byLanguage(language => quotedIn(language, name));
