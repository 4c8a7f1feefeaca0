import type { Kind } from '../kind.ts';

export const grease = {
  name: 'grease',
  group: 'defect',
  title: 'Grease',
  plural: 'grease',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: ['grease', 'greasy', 'greased', 'fat', 'fats', 'fat buildup', 'grease buildup', 'soap scum', 'lard', 'congealed', 'congealed fat', 'soap buildup', 'soap', 'cooking fat', 'cooking grease', 'buildup of grease', 'grease deposit'],
  notWords: ['grease on the lens', 'elbow grease', 'grease pencil', 'grease trap', 'grease monkey', 'fat chance', 'fat lip', 'grease on my', 'big fat', 'fat cat', 'greasy spoon', 'greasy burger', 'greasy food', 'soap opera', 'dish soap', 'so much soap', 'no soap', 'soap and water', 'soap box', 'soap suds', 'fat hands', 'fat fingers', 'grease gun', 'fat dog', 'fat squirrel', 'fat on me', 'fat cable', 'too fat', 'bar of soap', 'laundry soap', 'chew the fat', 'lens is greasy'],
  misheard: [{ heard: "greece|grace|greases|greece's|crease|creases|grief|greis|greasing|greek", said: 'grease', needs: 'distance' }, { heard: 'bruise|breeze', said: 'grease', needs: 'distance' }],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'Grease has hardened on the wall, which narrows the pipe and catches solids.',
    next: 'Have the line cleaned, and keep fat and oil out of the drains.',
    glossary: 'Grease: cooled kitchen fat that sticks to the wall of the pipe.',
  },
} as const satisfies Kind;
