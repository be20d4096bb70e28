import type { WantedStrength } from '../../quantities/strength.ts';
import { refuse } from '../../refusal.ts';
import type { AdditiveAsk } from '../additives/additive.ts';
import type { BatchSize, CarrierAsk, Mould, PlannedPortion, PlanRequest, PortionShare } from '../request.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'rescale-out-of-range': { factor: number };
  }
}

/** A hundredth to a hundred times: beyond, the member means another batch. */
const MOST_FACTOR = 100;

/**
 * The same recipe `factor` times as big: every mass and volume in it, the member's own spoons of colour and carrier included.
 * Percents, parts and strengths stay. A loaf or cylinder grows in length, so that its heat stays the same; cavities
 * grow in number where that is whole. Throws a Refusal `rescale-out-of-range` beyond a
 * hundredth or a hundred times.
 */
export function rescale(request: PlanRequest, factor: number): PlanRequest {
  if (!(factor >= 1 / MOST_FACTOR && factor <= MOST_FACTOR)) refuse('rescale-out-of-range', { factor });
  return {
    ...request,
    oils: { ...request.oils, totalGrams: request.oils.totalGrams && request.oils.totalGrams * factor },
    size: rescaleSize(request.size, factor),
    additives: rescaleAdditives(request.additives, factor),
    liquids: rescaleAdditives(request.liquids, factor),
    portions: request.portions.map(portion => rescalePortion(portion, factor)),
  };
}

function rescaleAdditives(asks: readonly AdditiveAsk[], factor: number): readonly AdditiveAsk[] {
  return asks.map(({ amount, ...ask }) => ({
    ...ask,
    amount: 'grams' in amount ? { grams: amount.grams * factor } : amount,
  }));
}

function rescaleSize(size: BatchSize, factor: number): BatchSize {
  switch (size.by) {
    case 'oils':
    case 'batter-mass':
      return { ...size, grams: size.grams * factor };
    case 'batter-volume':
      return { ...size, millilitres: size.millilitres * factor };
    case 'mould':
      return { ...size, mould: rescaleMould(size.mould, factor) };
  }
}

function rescaleMould(mould: Mould, factor: number): Mould {
  switch (mould.shape) {
    case 'loaf':
    case 'cylinder':
      return { ...mould, lengthCm: mould.lengthCm * factor };
    case 'cavities': {
      const count = mould.count * factor;
      return Number.isInteger(count)
        ? { ...mould, count }
        : { ...mould, eachMillilitres: mould.eachMillilitres * factor };
    }
  }
}

function rescalePortion(portion: PlannedPortion, factor: number): PlannedPortion {
  return {
    ...portion,
    share: rescaleShare(portion.share, factor),
    colours: portion.colours.map(colour => ({
      asked: { ...colour.asked, strength: rescaleAmount(colour.asked.strength, factor) },
      carrier: colour.carrier && rescaleCarrier(colour.carrier, factor),
    })),
  };
}

function rescaleAmount(strength: WantedStrength, factor: number): WantedStrength {
  if (strength.by !== 'amount') return strength;
  const { amount } = strength;
  return {
    by: 'amount',
    amount:
      amount.measure === 'mass'
        ? { ...amount, grams: amount.grams * factor }
        : { ...amount, millilitres: amount.millilitres * factor },
  };
}

function rescaleShare(share: PortionShare, factor: number): PortionShare {
  if (share.by === 'volume') return { ...share, millilitres: share.millilitres * factor };
  return share.by === 'mass' ? { ...share, grams: share.grams * factor } : share;
}

function rescaleCarrier(carrier: CarrierAsk, factor: number): CarrierAsk {
  return { ...carrier, millilitres: carrier.millilitres && carrier.millilitres * factor };
}
