import type { Kind } from '../kind.ts';

export const fracture = {
  name: 'fracture',
  group: 'defect',
  title: 'Fracture',
  plural: 'fractures',
  takes: ['to', 'position', 'clock', 'inches'],
  words: ['fracture', 'fractured', 'fracturing'],
  signs: ["pieces|piece|wall has|have|'ve|'s shifted|moved", 'pieces shifted', 'pieces moved', 'pieces displaced', 'pieces out of place', 'broken but in place', 'broken but still there', 'broken , but all the pieces', 'pieces are still there', 'shifted out of line', 'wall looks stepped'],
  notWords: ['fractured my', 'fracture clinic'],
  misheard: [{ heard: 'fracker|fractur|factor', said: 'fracture', needs: 'distance' }],
  examples: {
    says: [],
    never: [],
  },
  report: {
    meaning: 'The wall is split and the pieces have shifted, so the pipe has begun to lose its shape.',
    next: 'Have a licensed plumber price a repair of this length.',
    glossary: 'Fracture: a split in the pipe wall where the pieces have moved a little.',
  },
} as const satisfies Kind;
