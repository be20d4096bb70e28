import type { Names } from '../../language.ts';
import type { Band, Origin } from '../../origin.ts';

/** What the oil is, as far as lye is concerned: a wax or a fatty acid takes lye by other arithmetic than an oil. */
export type OilClass = 'oil' | 'butter' | 'animal-fat' | 'wax' | 'fatty-acid';

/** The cast an uncoloured bar takes from this oil: what the colour engine starts from. */
export type Yellowness = 'white' | 'cream' | 'yellow' | 'deep';

/** Names of fatty acids as carbon number and double bonds; `C18:1-OH` is ricinoleic acid. */
export type FattyAcid =
  | 'C4:0'
  | 'C6:0'
  | 'C8:0'
  | 'C10:0'
  | 'C12:0'
  | 'C14:0'
  | 'C16:0'
  | 'C16:1'
  | 'C18:0'
  | 'C18:1'
  | 'C18:1-OH'
  | 'C18:2'
  | 'C18:3'
  | 'C20:0'
  | 'C20:1'
  | 'C22:0'
  | 'C22:1'
  | 'C24:0';

/** Percent by mass of the fatty acids, near 100 in sum. */
export type Profile = Readonly<Partial<Record<FattyAcid, number>>>;

/** One generic oil, fat or wax. */
export type Oil = {
  /** Kebab case, stable for ever: `palm-kernel`. */
  readonly id: string;
  readonly names: Names;
  readonly inci: string;
  readonly oilClass: OilClass;
  /** Other words members type for it, any language, lower case. */
  readonly synonyms: readonly string[];
  /** Saponification value, mg KOH per g: the range of the standard, and a typical value inside it. */
  readonly saponification: Band;
  /** Of the liquid, g/ml, at `atCelsius`. */
  readonly density: Band & { readonly atCelsius: number };
  /** Iodine value, g iodine per 100 g; undefined where nobody prints one. */
  readonly iodine: Band | undefined;
  /** Typical fatty acids; undefined for waxes, whose other half is alcohols. */
  readonly profile: Profile | undefined;
  readonly yellowness: Yellowness;
  readonly origins: Readonly<
    Record<'saponification' | 'typical' | 'density' | 'profile' | 'yellowness', Origin>
  >;
};

/** Some grams of one oil. */
export type OilMass = { readonly oil: Oil; readonly grams: number };
