/**
 * Where a number or a statement comes from, so that a reply can show it.
 * `published` names a source and the place in it; `common practice` is a trade rule nobody has published;
 * `from memory` names where we believe it stands, unchecked; `computed` is arithmetic on other rows.
 */
export type Origin = {
  readonly trust: 'published' | 'common practice' | 'from memory' | 'computed';
  readonly source: string;
};

/** An estimate with the band it may lie in; `low <= typical <= high`, all in the same unit. */
export type Band = { readonly low: number; readonly typical: number; readonly high: number };
