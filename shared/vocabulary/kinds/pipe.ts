import type { Kind } from '../kind.ts';

export const pipe = {
  name: 'pipe',
  group: 'fitting',
  title: 'Pipe',
  plural: 'pipe',
  takes: ['to', 'material', 'diameterIn'],
  words: [],
  notWords: ['pipe up', 'pipe dream'],
  examples: {
    says: [
      { text: "Okay, from forty one on it's PVC, still four inch.", gives: { at: 41, material: 'pvc', diameterIn: 4 } },
      {
        text: 'Sixteen. She bells out to a six. Six inch tile.',
        gives: [
          { kind: 'reducer', at: 16 },
          { at: 16, material: 'clay', diameterIn: 6 },
        ],
      },
      { text: 'From 52 feet on it is six inch.', gives: { at: 52, diameterIn: 6 } },
      {
        text: 'The liner ends at 33 and behind it you have the old six inch clay.',
        gives: [
          { kind: 'liner-end', at: 33 },
          { at: 33, material: 'clay', diameterIn: 6 },
        ],
      },
    ],
    never: [
      'Half the street is still on clay, so you get used to seeing it.',
      'The neighbor has PVC the whole way, lucky guy.',
      'The seller told me somebody put plastic in years ago.',
      "If it was my house I'd replace it with PVC.",
    ],
  },
  report: {
    meaning: 'What the pipe is made of decides how it joins, how it ages and how it can be repaired.',
    next: 'Nothing to do.',
    glossary: 'Pipe: the drain line itself, named by its material and its size across the inside.',
  },
} as const satisfies Kind;
