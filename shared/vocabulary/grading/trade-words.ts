/** Words of the trade that are neither kinds nor materials, for the glossary of a report in which they occur. */
export interface TradeWord {
  readonly word: string;
  /** Matches the word in running text. */
  readonly pattern: RegExp;
  readonly meaning: string;
}

export const tradeWords: readonly TradeWord[] = [
  { word: 'Bore', pattern: /\bbore\b/i, meaning: 'The open inside of a pipe.' },
  {
    word: 'Counter',
    pattern: /\bcounter\b/i,
    meaning: 'The meter on the camera reel that shows how much cable has been pushed in.',
  },
  { word: 'Crown', pattern: /\bcrown\b/i, meaning: 'The top of the inside of a pipe.' },
  { word: 'Downstream', pattern: /\bdownstream\b/i, meaning: 'With the flow, away from the house.' },
  {
    word: 'Invert',
    pattern: /\binvert\b|\bflow line\b/i,
    meaning: 'The bottom of the inside of a pipe, where water runs.',
  },
  {
    word: 'Lateral',
    pattern: /\blateral\b/i,
    meaning:
      'The sewer pipe of one property, from the building to the public main or a septic tank; also called a side sewer.',
  },
  {
    word: 'O’clock',
    pattern: /\bo[’']clock\b/i,
    meaning:
      'A place on the wall of the pipe, seen the way the camera looks: 12 is the top, 3 the right, 6 the bottom.',
  },
  {
    word: 'Riser',
    pattern: /\briser\b/i,
    meaning: 'The upright pipe between a cleanout at the surface and the line below.',
  },
  {
    word: 'Sonde',
    pattern: /\bsonde\b/i,
    meaning: 'A small transmitter in the camera head, by which it can be found from above.',
  },
  { word: 'Spring line', pattern: /\bspring ?line\b/i, meaning: 'Half the height of a pipe, at 3 and at 9 o’clock.' },
  { word: 'Tap', pattern: /\btap\b/i, meaning: 'The place where a lateral is let into the public main.' },
  { word: 'Upstream', pattern: /\bupstream\b/i, meaning: 'Against the flow, toward the house.' },
];
