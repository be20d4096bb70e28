import { published, remembered } from '../../colourants/catalogue/origins.ts';
import type { CertifiedColour } from './certified-colour.ts';
import { certifiedOthers } from './certified-others.ts';
import { certifiedReds } from './certified-reds.ts';
import { named, type Substance } from './substance.ts';

const dyeSource = remembered('dye chemistry');
const vatSource = remembered(
  'organic pigment handbooks: only a reducing agent with alkali dissolves thioindigo',
);
const lakeSource = published(
  'Pharmaceutical Research 1993;10:1458: lakes let go of their dye as the alumina dissolves',
);

const shadeOf = (key: string): string =>
  key
    .split('-')
    .map(word => `${word.charAt(0).toUpperCase()}${word.slice(1)}`)
    .join(' ')
    .replace(/^Ext /, 'Ext. ');

/** A lake of a dye that holds still lets go of it, except the true red, which dissolves in nothing. */
function lakeAlkali(key: string, dye: Substance['alkali']): Substance['alkali'] {
  if (key === 'red-30' || dye.behaviour === 'shifts') return dye;
  return {
    behaviour: 'conditional',
    on: 'bleeds-from-lake',
    ...(dye.towards === undefined ? {} : { towards: dye.towards }),
  };
}

/** Toners and vat pigments are pigments even unlaked. */
const pigments = new Set(['red-6', 'red-7', 'red-30']);

function dyeOf(colour: CertifiedColour): Substance {
  const { key, ci, us, alkali, confidence = 'medium', names, e, likeDye, light = 'fades-slowly' } = colour;
  return {
    id: key,
    role: pigments.has(key) ? 'pigment' : 'dye',
    kind: pigments.has(key) ? 'lake' : 'dye',
    names: named(`${shadeOf(key)}; ${names}`),
    ci: [ci],
    alkali,
    light,
    confidence,
    source: key === 'red-30' ? vatSource : dyeSource,
    ...(us === undefined ? {} : { us: [us] }),
    ...(e === undefined ? {} : { e: [e] }),
    ...(likeDye === undefined ? {} : { like: likeDye }),
  };
}

function lakeOf(colour: CertifiedColour): Substance {
  const { key, ci, us, alkali, confidence = 'medium', names, likeLake, light = 'fades-slowly' } = colour;
  const lakes = named(names).flatMap(name => [`${name} lake`, `${name} aluminium lake`]);
  return {
    id: `${key}-lake`,
    role: 'lake',
    kind: 'lake',
    names: [`${shadeOf(key)} Lake`, ...lakes],
    ci: [ci],
    alkali: lakeAlkali(key, alkali),
    light,
    confidence,
    source: key === 'red-30' ? vatSource : lakeSource,
    ...(us === undefined ? {} : { us: [us] }),
    ...(likeLake === undefined ? {} : { like: likeLake }),
  };
}

/** Every certified colour as dye and as lake. */
export const certifiedColours: readonly Substance[] = [...certifiedReds, ...certifiedOthers].flatMap(
  colour => [dyeOf(colour), lakeOf(colour)],
);
