import { refuseSpirit } from '../../batch/additives/additives.ts';
import { refuseBleach } from '../../batch/additives/bleach.ts';
import { spaced, unbroken } from '../../over-lines.ts';
import { refuse } from '../../refusal.ts';
import { cut } from '../../text/excerpt.ts';
import { fold } from '../../text/fold.ts';
import { type BatchPart, batchPartIn, isCalledColour } from './batch-part.ts';

/**
 * What is asked for as a colour and is none. `filler`: white minerals and starches that only lighten; `talc`
 * besides may
 * hold asbestos; `stone`: ground lapis lazuli, which is the gem with its calcite and pyrite; `glow`: powders
 * that shine in the dark, which no list of colours allows in soap.
 */
export type NoColour = 'filler' | 'talc' | 'glow' | 'stone' | BatchPart;

declare module '../../refusal.ts' {
  interface Reasons {
    'no-colour': { readonly text: string; readonly kind: NoColour };
  }
}

/** Names in both languages, the whole of what is asked (common practice). */
const FILLERS: Readonly<Record<'filler' | 'talc' | 'stone', string>> = {
  talc: spaced`
    talc; talco; talcum; talcum powder;
    baby powder; steatite; esteatita;
    soapstone; soapstone powder; jabon de sastre; piedra jabon;
    french chalk; magnesium silicate; silicato de magnesio; ci 77718;
    77718
  `,
  stone: spaced`
    lapis lazuli; lapislazuli; ground lapis lazuli; genuine lapis lazuli;
    natural lapis lazuli; lapis lazuli pigment; lapis lazuli natural;
    pigmento de lapislazuli; natural ultramarine; genuine ultramarine;
    ultramar natural
  `,
  filler: spaced`
    chalk; calcium carbonate; creta; carbonato de calcio;
    silica; silice; diatomaceous earth;
    tierra de diatomeas; tierra de diatomea; diatomite;
    cornstarch; corn starch; maicena;
    almidon de maiz; almidon; starch; rice starch;
    almidon de arroz; arrowroot; tapioca starch; baking soda;
    bicarbonate; bicarbonato; bicarbonato de sodio;
    gypsum; yeso; plaster; pumice;
    piedra pomez; barium sulfate; barium sulphate; sulfato de bario;
    blanc fixe; magnesium carbonate; carbonato de magnesio; eggshell powder;
    cascara de huevo
  `,
};
const BY_NAME: ReadonlyMap<string, NoColour> = new Map(
  (Object.entries(FILLERS) as ['filler' | 'talc' | 'stone', string][]).flatMap(([kind, names]) =>
    names.split('; ').map(name => [fold(name), kind] as const),
  ),
);

/**
 * Luminescent zinc sulfide is listed for facial make-up and nails alone (21 CFR 73.2995), strontium aluminate nowhere
 * (21 CFR 73 and 74; Regulation (EC) No 1223/2009 Annex IV).
 */
const GLOW = new RegExp(
  unbroken`
    \b(?:glow in (?:the )?dark|glow (?:powder|pigment|mica|dust)|glowing (?:powder|pigment)|luminescent|
    luminous|luminiscente|phosphorescent|fosforescente|fosforescencia|brillan? en (?:la )?oscuridad|
    strontium aluminate|aluminato de estroncio|zinc sulphide|zinc sulfide|sulfuro de zinc|sulfuro de cinc)\b
  `,
  'u',
);

/** Which of them a colourant's name asks for, or undefined. */
export function noColourIn(text: string): NoColour | undefined {
  const name = fold(text.slice(0, 200));
  const bare = name.replace(/(?: powder| polvo)$|^(?:polvo de |powdered )/gu, '');
  return BY_NAME.get(name) ?? BY_NAME.get(bare) ?? (GLOW.test(name) ? 'glow' : undefined);
}

/** Throws `no-colour` where a colourant's name asks for a filler, a gem or a powder that glows. */
export function refuseNoColour(text: string): void {
  const kind = noColourIn(text);
  if (kind) refuse('no-colour', { text: cut(text, 80), kind });
}

/** Throws `liquid-is-spirit` for strong drink and alcohol, `liquid-is-bleach` for bleach, unless a colour is called so. */
export function refuseSpirits(text: string): void {
  if (isCalledColour(text)) return;
  refuseSpirit(text);
  refuseBleach(text);
}

/**
 * Throws `no-colour` where what is asked for as a colour is a liquid, a sugar, an acid, a fat, a scent and the like, so
 * that it is neither dosed by the spoon nor taken for a colour that is called after it; strong drink and bleach are
 * refused as they are in place of water. Meant for names that are no colourant's own.
 */
export function refuseBatchPart(text: string): void {
  refuseSpirits(text);
  const part = batchPartIn(text);
  if (part) refuse('no-colour', { text: cut(text, 80), kind: part });
}
