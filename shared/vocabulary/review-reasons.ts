/** What each review reason means to the person who has to look: said where a flag brings no detail of its own. */
import type { ReviewReason } from '../schemas/draft.ts';

export const reasonSentences = {
  'distance-missing': 'no distance was said for it',
  'distance-unsure': 'the distance is unsure',
  'distance-jumps': 'the distance does not fit where the camera was',
  'word-unsure': 'a word was heard weakly, or taken for another',
  hedged: 'it was said with doubt',
  'negation-unsure': 'it may have been said not to be there',
  'maybe-repeat': 'it may be the same thing as another one',
  'run-unsure': 'it is unclear which run it belongs to',
  corrected: 'a correction was spoken, and what it corrects is unclear',
  'value-odd': 'a value is unsure',
  'readers-disagree': 'it can be read in two ways',
  'counter-disagrees': 'the counter in the picture reads otherwise',
  'speech-lost': 'talk near it was not understood',
} as const satisfies Record<ReviewReason, string>;
