/** Lengths, depths and volumes as a reader says them, in feet and inches or in metres. */

export type Units = 'feet' | 'meters';

const metersPerFoot = 0.3048;
const millimetersPerInch = 25.4;

/** Feet as "19 ft 6 in", whole feet as "19 ft"; metres to the tenth as "5.9 m". */
export function length(feet: number, units: Units): string {
  if (units === 'meters') return `${(feet * metersPerFoot).toFixed(1)} m`;
  const inches = Math.round(feet * 12);
  const whole = Math.floor(inches / 12);
  const rest = inches - whole * 12;
  if (rest === 0) return `${whole} ft`;
  return whole === 0 ? `${rest} in` : `${whole} ft ${rest} in`;
}

/** A counter reading as the counter shows it: "19.5 ft" or "5.94 m". */
export function reading(counterFeet: number, counterUnit: 'ft' | 'm'): string {
  const value = counterUnit === 'm' ? counterFeet * metersPerFoot : counterFeet;
  return `${plainNumber(value, 2)} ${counterUnit}`;
}

/** A size said in inches; a metric report adds the millimetres. */
export function inchSize(inches: number, units: Units): string {
  const said = `${plainNumber(inches, 2)} in`;
  return units === 'meters' ? `${Math.round(inches * millimetersPerInch)} mm (${said})` : said;
}

/** A range of volume, each end rounded to what such an estimate can carry. */
export function volumeRange(lowGallons: number, highGallons: number, units: Units): string {
  const factor = units === 'meters' ? 3.785411784 : 1;
  const unit = units === 'meters' ? 'L' : 'gal';
  const low = roughly(lowGallons * factor);
  const high = roughly(highGallons * factor);
  return low === high ? `about ${high} ${unit}` : `${low} to ${high} ${unit}`;
}

function roughly(value: number): string {
  return value < 10 ? plainNumber(value, 1) : String(Math.round(value));
}

/** No trailing zeros: 2, 2.5, 19.25. */
export function plainNumber(value: number, places: number): string {
  return String(Number(value.toFixed(places)));
}
