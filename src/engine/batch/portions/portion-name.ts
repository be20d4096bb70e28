import type { PortionAsk } from '../request.ts';

/**
 * How a portion is called: as its maker named it, or by its colours; or else by what it is. `nth`: which of several that are called
 * alike, from 2 on.
 */
export type PortionName =
  | { readonly told: string }
  | { readonly is: 'plain' | 'rest'; readonly nth?: number };

/** What records keep of a portion that nothing names: see {@link keptName}. */
const UNNAMED = /^(plain|rest)(?: ([1-9]\d*))?$/u;

/** The name under which a portion is kept, alike in every language; `taken` counts names, so that no two are alike. Pure but for it. */
export function keptName(portion: PortionAsk, taken: Map<string, number>): string {
  const name = nameOf(portion);
  const count = (taken.get(name) ?? 0) + 1;
  taken.set(name, count);
  return count === 1 ? name : `${name} ${count}`;
}

function nameOf({ name, colours, share }: PortionAsk): string {
  if (name !== undefined) return name;
  if (colours.length > 0) return colours.map(({ text }) => text).join(' + ');
  return share.by === 'rest' ? 'rest' : 'plain';
}

/**
 * What a kept name says, as a language tells it. Pure.
 * @example portionCalled('rest 2') // { is: 'rest', nth: 2 }
 */
export function portionCalled(kept: string): PortionName {
  const [, is, nth] = UNNAMED.exec(kept) ?? [];
  if (is === undefined) return { told: kept };
  return { is: is as 'plain' | 'rest', ...(nth !== undefined && { nth: Number(nth) }) };
}
