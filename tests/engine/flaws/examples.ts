import type { CauseId } from '../../../src/engine/flaws/cause.ts';
import batter from './examples/batter.json' with { type: 'json' };
import colourChange from './examples/colour-change.json' with { type: 'json' };
import colourStrength from './examples/colour-strength.json' with { type: 'json' };
import lyeAndHardness from './examples/lye-and-hardness.json' with { type: 'json' };
import specks from './examples/specks.json' with { type: 'json' };
import surface from './examples/surface.json' with { type: 'json' };
import swirlAndShape from './examples/swirl-and-shape.json' with { type: 'json' };
import white from './examples/white.json' with { type: 'json' };
import type { Example } from './learned.ts';

const byCause: Readonly<Record<CauseId, readonly string[]>> = {
  ...batter,
  ...colourChange,
  ...colourStrength,
  ...lyeAndHardness,
  ...specks,
  ...surface,
  ...swirlAndShape,
  ...white,
};

/**
 * Descriptions of flaws in the manner of many makers, invented, each with its cause.
 * The reader's lexicon was tuned to them and its sense of wording is learned from them: add to them freely.
 */
export const EXAMPLES: readonly Example[] = (
  Object.entries(byCause) as [CauseId, readonly string[]][]
).flatMap(([cause, texts]) => texts.map(text => ({ text, cause })));
