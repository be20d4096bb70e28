import { spaced } from '../over-lines.ts';
import { refuse } from '../refusal.ts';
import { foldedWords } from '../text/fold.ts';
import { type ColourantChoice, choiceOf, colourantById } from './catalogue.ts';
import type { Colourant } from './colourant.ts';

/** A metal members ask for as a colour. `unnamed` is "metallic flake" and the like; `leaf` is sold as gold or silver. */
export type Metal = 'aluminium' | 'copper' | 'bronze' | 'brass' | 'zinc' | 'tin' | 'leaf' | 'unnamed';

/**
 * `metal`: a powder or flake for certain. `unclear`: a bare word that also names a colour of mica.
 * `glitter`: plastic film that often carries aluminium; its ingredient list says.
 */
export type MetalFinding = { readonly metal: Metal; readonly certainty: 'metal' | 'unclear' | 'glitter' };

declare module '../refusal.ts' {
  interface Reasons {
    'metal-never-in-lye': { readonly text: string; readonly metal: Metal };
    'glitter-read-label': { readonly text: string };
    /** `instead` is the catalogue entry that was probably meant. */
    'metal-or-mica': { readonly text: string; readonly metal: Metal; readonly instead: ColourantChoice };
  }
}

const words = (text: string): ReadonlySet<string> => new Set(text.split(' '));

const metalWords: ReadonlyMap<string, Metal> = new Map([
  ...['aluminium', 'aluminio', 'alluminio', 'aluminiumpulver', 'alu'].map(
    word => [word, 'aluminium'] as const,
  ),
  ...['copper', 'cobre', 'cuivre', 'rame', 'kupfer', 'kupferpulver', 'cuprum'].map(
    word => [word, 'copper'] as const,
  ),
  ...['bronze', 'bronce', 'bronzo', 'bronzepulver'].map(word => [word, 'bronze'] as const),
  ...['brass', 'laton', 'latao', 'laiton', 'ottone', 'messing'].map(word => [word, 'brass'] as const),
  ...['zinc', 'cinc', 'zinco', 'zink'].map(word => [word, 'zinc'] as const),
  ...['gold', 'oro', 'silver', 'plata', 'argent', 'prata', 'argento', 'silber'].map(
    word => [word, 'leaf'] as const,
  ),
]);

const formWords = words(
  spaced`
    powder powdered polvo poudre pulver polvere po dust flake flaked escama copo paillette scaglia leaf
    hoja glitter purpurina foil filing shaving limadura lamina particle metal metallic metalico metalica
    metallique metallico metalizado metalizada metallized metallised flitter diamantina brillantina escarcha
  `,
);
const glitterWords = words(
  'glitter flake purpurina escama paillette flitter scaglia leaf foil particle powder polvo dust pigment pigmento',
);
const metallicWords = words(
  'metal metallic metalico metalica metallique metallico metalizado metalizada metallized metallised',
);

/** Words that make a compound or a mica of what would else be a metal: "aluminium lake", "copper chlorophyllin". */
const compoundWords = words(
  spaced`
    mica lake laca laque lacca lack oxide oxido oxyde oxid ossido oxychloride hydroxide hidroxido hydroxyde
    idrossido hydrate alumina silicate silicato sulphate sulfato stearate estearato borosilicate
    borosilicato chlorophyllin clorofilina chlorophylline phthalocyanine ftalocianina carbonate carbonato
    chloride cloruro complex complejo gluconate acetate calcium white blanco ricinoleate myristate
    distearate tristearate starch octenylsuccinate salt salts pca peptide neon ultramarine clay arcilla
  `,
);

/** The mica or oxide a bare metal word probably means. */
const probablyMeant: Readonly<Record<Metal, string>> = {
  aluminium: 'silver-mica',
  copper: 'copper-mica',
  bronze: 'bronze-mica',
  brass: 'gold-mica',
  zinc: 'zinc-oxide',
  tin: 'silver-mica',
  leaf: 'gold-mica',
  unnamed: 'gold-mica',
};

/** Glitter of plastic film, with or without metal on it. */
const plasticGlitter = words('glitter purpurina flitter paillette diamantina brillantina escarcha');
function meantBy(metal: Metal): Colourant {
  const meant = colourantById(probablyMeant[metal]);
  if (meant === undefined) throw new Error(`no catalogue entry ${probablyMeant[metal]}`);
  return meant;
}

/** Words that leave the question open: "copper colour" is still either. */
const toneWords = words('colour tone shade tono metal metallic metalico metalica cosmetic pure');

function findingIn(part: readonly string[]): MetalFinding | undefined {
  const numbers = part.filter(word => word === '77000' || word === '77400');
  if (numbers.length > 0)
    return { metal: numbers[0] === '77000' ? 'aluminium' : 'copper', certainty: 'metal' };
  if (part.some(word => compoundWords.has(word))) return undefined;
  const named = part.find(word => metalWords.has(word));
  const formed = part.some(word => formWords.has(word)) || /pulver$/.test(named ?? '');
  if (named === undefined) {
    const metallic = part.some(word => metallicWords.has(word));
    if (metallic && part.some(word => glitterWords.has(word)))
      return { metal: 'unnamed', certainty: 'metal' };
    return part.some(word => plasticGlitter.has(word))
      ? { metal: 'unnamed', certainty: 'glitter' }
      : undefined;
  }
  const metal = metalWords.get(named) ?? 'unnamed';
  if (metal === 'leaf' && part.some(word => plasticGlitter.has(word))) return { metal, certainty: 'glitter' };
  if (formed || metal === 'aluminium') return { metal, certainty: 'metal' };
  const bare = metal !== 'leaf' && part.every(word => metalWords.has(word) || toneWords.has(word));
  return bare ? { metal, certainty: 'unclear' } : undefined;
}

/**
 * The metal powder, flake or leaf a colourant's name asks for, or undefined when it names none.
 * Meant for names of colourants, not for free prose: "stirred in an aluminium pan" is not asking for one.
 * Aluminium makes hydrogen and heat with lye; copper, bronze, brass and zinc corrode in it
 * (general chemistry, from memory). Lakes, oxides, micas and copper chlorophyllin are not metals.
 */
export function metalIn(text: string): MetalFinding | undefined {
  const parts = text.split(/[,;+/]|\b(?:with|con|avec)\b/i).map(foldedWords);
  const findings = parts.map(findingIn).filter(finding => finding !== undefined);
  return findings.find(finding => finding.certainty === 'metal') ?? findings[0];
}

/** Throws `metal-never-in-lye`, `metal-or-mica` for a bare word, or `glitter-read-label`, when {@link metalIn} finds a metal. */
export function refuseMetal(text: string): void {
  const finding = metalIn(text);
  if (finding === undefined) return;
  const { metal } = finding;
  if (finding.certainty === 'metal') refuse('metal-never-in-lye', { text, metal });
  if (finding.certainty === 'glitter') refuse('glitter-read-label', { text });
  refuse('metal-or-mica', { text, metal, instead: choiceOf(meantBy(metal)) });
}
