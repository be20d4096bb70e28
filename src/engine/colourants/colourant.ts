import type { Names } from '../language.ts';
import type { Band, Origin } from '../origin.ts';
import type { StrengthName } from '../quantities/strength.ts';

/** What a colourant is made of, as far as it decides dose, wetting and behaviour. */
export type ColourantKind =
  | 'oxide'
  | 'ultramarine'
  | 'chromium'
  | 'mica'
  | 'neon'
  | 'white'
  | 'lake'
  | 'dye'
  | 'carbon'
  | 'clay'
  | 'botanical';

/** The liquids a colourant is wetted in before it meets the batter. */
export type Carrier = 'water' | 'oil' | 'glycerin';

/** What raw soap (pH 9-14) does to a colour. `never` must not meet lye at all. */
export type AlkaliBehaviour =
  | 'stable'
  | 'conditional'
  | 'shifts'
  | 'destroyed'
  | 'bleeds'
  | 'never'
  | 'unknown';

/** The fields of a colourant whose origin is recorded. */
export type SourcedField = 'dose' | 'carriers' | 'density' | 'bulkDensity' | 'alkali' | 'light' | 'identity';

/** What a law allows at most: a share of the finished bar by mass. */
export type LegalCap = { readonly share: number; readonly law: 'us' | 'eu'; readonly name: string };

/** One generic colourant: what anybody's jar of it has in common. A member's own jar is a shelf item. */
export type Colourant = {
  /** Kebab case, stable for ever: `ultramarine-blue`. */
  readonly id: string;
  readonly kind: ColourantKind;
  readonly names: Names;
  /** The names without what tells it apart from others that are called alike; undefined where they say no more. */
  readonly called?: Names;
  /** Other words members type for it, any language, lower case. */
  readonly synonyms: readonly string[];
  /** Colour Index numbers, digits only (`77007`, `77268:1`); empty when none exists. */
  readonly ci: readonly string[];
  /** The INCI name, or undefined when none exists. */
  readonly inci: string | undefined;
  /** Of one solid particle, g/ml. */
  readonly density: Band;
  /** Of the loose powder in a level spoon, g/ml: varies twofold between jars, hence the band. */
  readonly bulkDensity: Band;
  /** Level US teaspoons per US cup of raw batter. */
  readonly dose: {
    readonly fullTspPerCup: number;
    readonly ceilingTspPerCup: number;
    /** What most begin with where it is less than full colour. */
    readonly usual?: StrengthName;
  };
  /** Where a law holds the dose below what would colour best. */
  readonly legal?: LegalCap;
  /** Liquids it may be wetted in, the usual one first. */
  readonly carriers: readonly [Carrier, ...Carrier[]];
  /** True where lots differ so much that only a dish test (a pinch in water) settles the carrier. */
  readonly dishTestDecides: boolean;
  readonly alkali: {
    readonly behaviour: AlkaliBehaviour;
    /** The colour it goes to, an id such as `beige`, when it changes. */
    readonly towards?: string;
    /** What a `conditional` depends on, an id such as `hot-strong-lye`. */
    readonly on?: string;
  };
  readonly light: 'holds' | 'fades-slowly' | 'fades';
  /**
   * The usual colour of a bar at full dose, `#rrggbb`, from memory: a swatch beside the name, and what optics are
   * rebuilt from where no spectrum was published (`colour/colourant-optics.ts`). An estimate, never a measurement.
   */
  readonly hex: string;
  /** The id of the general entry this is a grade of: CI and INCI look-ups answer with that one. */
  readonly gradeOf?: string;
  /** Ids of hints that `src/words` speaks (`deepen-violet-with-blue`). */
  readonly hints: readonly string[];
  readonly origins: Readonly<Record<SourcedField, Origin>>;
};
