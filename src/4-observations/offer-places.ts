/** Places to choose from, as a flag offers them. The unit of the counter is put to them when the draft is written. */
import type { Flag } from '../../shared/schemas/draft.ts';
import type { Unit } from '../../shared/wording/short.ts';

export const placeOffers = (...feet: readonly number[]): { value: number; label: string }[] =>
  feet.map((value) => ({ value, label: `${value}` }));

/** A flag with the unit behind the places it offers. */
export const inUnit = ({ offers, ...flag }: Flag, unit: Unit): Flag =>
  offers
    ? {
        ...flag,
        offers: offers.map(({ value, label }) => ({
          value,
          label: typeof value === 'number' && label === `${value}` ? `${label} ${unit}` : label,
        })),
      }
    : flag;
