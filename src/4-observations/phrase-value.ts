/** The values that phrases give: for which field, and whether two of them say the same. */
import type { Phrase } from '../3-phrases/phrase.ts';

interface GivenValue {
  readonly field: 'position' | 'clock' | 'degree' | 'percent' | 'inches' | 'diameterIn' | 'serves' | 'angleDeg';
  readonly value: string | number;
}

/** The value a phrase gives to the thing it is said of; a place and a material are read elsewhere, for they are more than that. */
export function givenBy(phrase: Phrase): GivenValue | null {
  switch (phrase.family) {
    case 'position':
      return { field: 'position', value: phrase.position };
    case 'clock':
      return { field: 'clock', value: phrase.hour };
    case 'degree':
      return { field: 'degree', value: phrase.degree };
    case 'share':
      return { field: 'percent', value: phrase.percent };
    case 'inches':
      return { field: 'inches', value: phrase.inches };
    case 'diameter':
      return { field: 'diameterIn', value: phrase.inches };
    case 'service':
      return { field: 'serves', value: phrase.service };
    case 'angle':
      return { field: 'angleDeg', value: phrase.degrees };
    default:
      return null;
  }
}

export const fieldOf = (phrase: Phrase): GivenValue['field'] | null => givenBy(phrase)?.field ?? null;

/** Whether one value may be said in place of another. */
export const isReplaceable = (phrase: Phrase): boolean =>
  phrase.family === 'distance' || phrase.family === 'material' || fieldOf(phrase) !== null;

/** Whether two values are of one sort, so that the second may stand for the first: a side and an hour are. */
export const sameSort = (a: Phrase, b: Phrase): boolean =>
  a.family === b.family ||
  (a.family === 'position' && b.family === 'clock') ||
  (a.family === 'clock' && b.family === 'position');

export function sameValue(a: Phrase, b: Phrase): boolean {
  if (a.family === 'distance' && b.family === 'distance')
    return a.distance.feet === b.distance.feet && a.distance.toFeet === b.distance.toFeet;
  if (a.family === 'material' && b.family === 'material') return a.material === b.material;
  const given = givenBy(a);
  return given !== null && a.family === b.family && given.value === givenBy(b)?.value;
}
