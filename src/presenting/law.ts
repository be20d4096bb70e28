import type { Block } from '../conversation/reply.ts';
import { type EuUse, nameIn, permittedUses, type UsUse } from '../engine/stability/permitted.ts';
import { permittedSummary } from '../engine/stability/permitted-summary.ts';
import type { Component, IngredientReport } from '../engine/stability/report.ts';
import type { Words } from '../words/index.ts';

/** A listing's own conditions run to paragraphs; this much of one is shown, characters. */
const longestTerms = 160;
function clip(printed: string): string {
  const text = printed.replace(/^[—\s]+/, '').replace(/[.\s]+$/, '');
  if (text.length <= longestTerms) return text;
  const whole = text.slice(0, text.lastIndexOf(' ', longestTerms)).replace(/[\s,;:(]+$/, '');
  return `${whole} …`;
}

/** Where the powder stands with each law, in a line each. */
export function lawSummary({ components }: IngredientReport, say: Words): readonly Block[] {
  if (components.length === 0) return [];
  const { us, eu } = permittedSummary(components);
  return [{ kind: 'rows', title: say.checking.mayBeUsed, rows: [say.checking.us(us), say.checking.eu(eu)] }];
}

/** Every listing with its section and date, and what the law leaves to the maker, in small print. */
export function lawBlock({ components, kind }: IngredientReport, say: Words): Block {
  const { permitted } = say.stability;
  const lines = [
    permitted.lyeFirst,
    ...components.map(component => componentLaw(component, say)),
    ...(kind === 'neon' ? [permitted.fluorescent] : []),
    permitted.trueSoap,
    permitted.euResponsible,
    permitted.change,
  ];
  return { kind: 'text', text: [...new Set(lines)].filter(Boolean).join('\n'), folds: true };
}

function componentLaw(component: Component, say: Words): string {
  const { us, eu } = permittedUses(component);
  const name = nameIn(component);
  const lines = [...us.map(use => usSentence(use, say)), ...together(eu).map(use => euSentence(use, say))];
  const told = [...new Set(lines)];
  // A sentence about an unlisted one names it already.
  return told.length === 1 ? (told[0] ?? '') : say.checking.lawOf({ name, lines: told });
}

function usSentence(use: UsUse, say: Words): string {
  const { permitted } = say.stability;
  switch (use.status) {
    case 'not-listed':
      return permitted.usNotListed(use);
    case 'no-row':
      return permitted.usNoRow(use);
    case 'no-colour':
      return permitted.noColour(use);
    case 'listed': {
      const { listing, lake } = use;
      return [
        permitted.us(listing),
        ...(listing.terms === '' ? [] : [permitted.usTerms({ terms: clip(listing.terms) })]),
        ...(lake ? [permitted.usLake] : listing.certified ? [permitted.usCertified] : []),
        dated(listing.asOf, say),
      ].join(' ');
    }
  }
}

/** Entries that say the same become one: iron oxides stand in Annex IV three times. */
function together(uses: readonly EuUse[]): readonly EuUse[] {
  const merged = new Map<string, EuUse>();
  for (const use of uses) {
    const terms = use.status === 'listed' ? use.listing : undefined;
    const key = terms ? `${terms.restriction};${terms.most};${terms.conditions}` : use.status;
    const before = merged.get(key);
    const entry =
      before?.status === 'listed' && terms ? `${before.listing.entry}, ${terms.entry}` : undefined;
    merged.set(key, entry && terms ? { status: 'listed', listing: { ...terms, entry } } : use);
  }
  return [...merged.values()];
}

function euSentence(use: EuUse, say: Words): string {
  const { permitted } = say.stability;
  switch (use.status) {
    case 'no-row':
      return permitted.euNoRow(use);
    case 'no-colour':
      return permitted.noColour(use);
    case 'listed': {
      const { listing } = use;
      return [
        permitted.eu(listing),
        ...(listing.most === '' ? [] : [permitted.euMost(listing)]),
        ...(listing.conditions === ''
          ? []
          : [permitted.euConditions({ conditions: clip(listing.conditions) })]),
        dated(listing.asOf, say),
      ].join(' ');
    }
  }
}

const dated = (asOf: string, say: Words): string =>
  asOf === '' ? say.stability.permitted.undated : say.stability.permitted.dated({ asOf });
