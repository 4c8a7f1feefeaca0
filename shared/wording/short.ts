/**
 * The short form of an observation, for tables, lists and labels: "38–44 ft", "Roots", "top, 25 %".
 * Sentences for a buyer are the report's own work.
 */
import type { Observation } from '../schemas/draft.ts';
import type { AttributeName } from '../vocabulary/attributes.ts';
import { kinds } from '../vocabulary/kinds/index.ts';
import { materials } from '../vocabulary/materials.ts';
import { services } from '../vocabulary/services.ts';

export type Unit = 'ft' | 'm';

/** A counter reading without its unit: 17.5, 22, 41.25. */
export function shortNumber(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** Where it is: "22 ft", "38–44 ft", "about 31 ft" when it was worked out, "?" when nobody knows. */
export function shortPlace(
  observation: Pick<Observation, 'at' | 'to' | 'atBasis' | 'atPlusMinus'>,
  unit: Unit,
): string {
  if (observation.at === null) return '?';
  const about = observation.atBasis === 'track' ? 'about ' : '';
  const stretch = observation.to === null ? '' : `–${shortNumber(observation.to)}`;
  const plusMinus = observation.atPlusMinus === undefined ? '' : ` ± ${shortNumber(observation.atPlusMinus)}`;
  return `${about}${shortNumber(observation.at)}${stretch}${plusMinus} ${unit}`;
}

/** The name of the kind, with the doubt when there is one: "Crack, suspected". */
export function shortName(observation: Pick<Observation, 'kind' | 'status'>): string {
  const title = kinds.find((kind) => kind.name === observation.kind)?.title ?? observation.kind;
  return observation.status === 'suspected' ? `${title}, suspected` : title;
}

/** Everything else that was said of it, in a fixed order: "clay, 4 in", "top, 25 %", "from cast iron to clay". */
export function shortDetails(observation: Observation): string {
  const o = observation;
  const change =
    o.fromMaterial !== null && o.toMaterial !== null
      ? `${materialTitle(o.fromMaterial)} to ${materialTitle(o.toMaterial)}`
      : o.toMaterial !== null
        ? `to ${materialTitle(o.toMaterial)}`
        : o.fromMaterial !== null && `from ${materialTitle(o.fromMaterial)}`;
  const clock = o.clock !== null && `${o.clock}${o.clockTo ? ` to ${o.clockTo}` : ''} o'clock`;
  const said = (name: AttributeName) => o[name] !== null && shortValue(name, o[name]);
  const parts = [
    said('material'),
    said('diameterIn'),
    change,
    clock,
    said('position'),
    said('degree'),
    said('percent'),
    said('inches'),
    said('angleDeg'),
    said('serves'),
  ];
  return parts.filter(Boolean).join(', ');
}

/** One value by itself: "25 %", "10 o'clock", "all around". */
export function shortValue(name: AttributeName, value: string | number): string {
  const number = typeof value === 'number' ? shortNumber(value) : value;
  switch (name) {
    case 'clock':
      return `${number} o'clock`;
    case 'percent':
      return `${number} %`;
    case 'inches':
    case 'diameterIn':
      return `${number} in`;
    case 'angleDeg':
      return `${number}°`;
    case 'position':
      return number.replace('-', ' ');
    case 'material':
      return materialTitle(number);
    case 'serves':
      return services.find((service) => service.name === value)?.title ?? number;
    default:
      return number;
  }
}

/** A moment of the recording: "1:05", "1:02:05". */
export function shortTime(seconds: number): string {
  const whole = Math.floor(seconds);
  const two = (value: number) => String(value).padStart(2, '0');
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  return hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
}

function materialTitle(name: string): string {
  return materials.find((material) => material.name === name)?.title ?? name;
}
