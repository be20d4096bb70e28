import { refuse } from '../refusal.ts';
import { readEntries } from './entries.ts';
import { euListings } from './listings.ts';
import type { Component } from './report.ts';
import { substanceById } from './substances/index.ts';

/** A component of a finished bar; `grams` of it in the bar, when a plan says. */
export type LabelComponent = Component & { readonly grams?: number };

/** The colourant part of an ingredient declaration. */
export type LabelLine = {
  /** `Mica, Titanium Dioxide, Red 30 Lake`. */
  readonly line: string;
  readonly names: readonly string[];
  /** Names of what the powder only may contain: the supplier must say before the label is printed. */
  readonly unsure: readonly string[];
};

const annexNumbers: ReadonlySet<string> = new Set(euListings.flatMap(({ ci }) => ci));

/** What the list wrote, without numbers and percentages. */
const written = ({ as }: LabelComponent): string => readEntries(as)[0]?.name || as;

/** The name a US label prints; D&C, FD&C and "No." are left out, as labels do (common practice). */
function usName(component: LabelComponent): string {
  const substance = substanceById(component.id);
  return substance === undefined || substance.family === true ? written(component) : substance.names[0];
}

/** The EU names a colour of Annex IV by its CI number, everything else by its INCI name. */
function euNames(component: LabelComponent): readonly string[] {
  const numbers = substanceById(component.id)?.ci ?? [];
  const listed = numbers.filter(
    number => annexNumbers.has(number) || annexNumbers.has(number.split(':')[0] ?? ''),
  );
  return listed.length > 0 ? listed.map(number => `CI ${number}`) : [usName(component)];
}

const namesFor = (component: LabelComponent, law: 'us' | 'eu'): readonly string[] =>
  law === 'us' ? [usName(component)] : euNames(component);

const belongs = ({ role }: LabelComponent): boolean => role !== 'carrier';

/** Heaviest first; those without a mass keep their place in the list, behind those with one. */
const byMass = (components: readonly LabelComponent[]): readonly LabelComponent[] =>
  components.toSorted((a, b) => (b.grams ?? -1) - (a.grams ?? -1));

/**
 * The colourants of a finished bar as its label declares them. US (21 CFR 701.3(f)) and EU (Regulation (EC)
 * No 1223/2009, Article 19(1)(g)) both let colours follow the other ingredients in any order; we keep the order of
 * mass, which both allow, each name once. Refuses `metal-never-in-lye` when one of them must not meet lye.
 */
export function labelLine(components: readonly LabelComponent[], law: 'us' | 'eu'): LabelLine {
  const metal = components.find(({ alkali }) => alkali === 'never');
  if (metal !== undefined) refuse('metal-never-in-lye', { text: metal.as, metal: 'unnamed' });
  const declared = byMass(components.filter(belongs));
  const namesOf = (ifPresent: boolean): readonly string[] => [
    ...new Set(declared.filter(part => part.ifPresent === ifPresent).flatMap(part => namesFor(part, law))),
  ];
  const names = namesOf(false);
  return { line: names.join(', '), names, unsure: namesOf(true).filter(name => !names.includes(name)) };
}
