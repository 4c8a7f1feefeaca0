/** Small talks and the runs they hold: how many, which way each goes, where and why it ends. */
import { describe, expect, it } from 'vitest';
import { draftWords } from '../../src/4-observations/draft-words.ts';
import { wordsOf } from './read-sentence.ts';

/** Direction and end of each run, as "down 52 main". */
const talks: readonly (readonly [runs: readonly string[], talk: string])[] = [
  [
    ['down 55 main', 'up 20 stopped'],
    "I'm in the cleanout on the side of the house, pushing toward the street. Counter at zero. Starting off it's four inch clay. Roots at nine, light. Let me clear the lens. Offset at eighteen. Crack at twenty two. City main at fifty five. Coming back. Now same cleanout up toward the house, reset to zero. Cast iron, three inch. Tee at six. Belly eight to twelve. Can't get past the bend at twenty.",
  ],
  [
    ['up 31 end-of-line', 'down 48 main'],
    "First I'll look up toward the house from the front cleanout. Counter's zero. PVC. Wye at six on the left. Tee at fifteen. End of the line at thirty one. Okay spin it around and go to the street. Count starts over. Clay, four inch. Root ball at twelve. Main at forty eight.",
  ],
  [
    ['down 30 other', 'down 51 manhole'],
    "Toilet's off and I'm going down the flange. Three inch cast. Wye on the left at four. Crack at eighteen. Tee at thirty, and I'll leave it there. There's a cleanout at the bottom of the stack, and the plug came right out. So from here it's toward the street. Six inch cast iron. Grease at two. Eighteen, an open joint. Fifty one and it opens into a manhole.",
  ],
  [
    ['down 52 main'],
    "So we'll run this from the front cleanout to the street. Camera reads zero. Clay. At ten roots. Pulling back a touch to see that. Okay, going forward. At nineteen a crack. Backing up a foot. Yeah that's a crack. On we go. Thirty three an offset. Main, fifty two.",
  ],
  [
    ['down 52 main', 'up 18 stopped'],
    "Side yard, two way cleanout. Street first. PVC at the start. Four, roots. Twenty five, roots again. Fifty two, tap into the main. That's that way done. Other direction now. Three feet, a wye. Eleven, scale. Eighteen, hard stop, can't turn it.",
  ],
  [
    ['down 45 main', 'up 18 end-of-line'],
    'The lower cleanout gets us to the street. Clay. Roots at 8. Belly at 20. Main at 45. Going back over it. Belly. Roots. Out. The house side now. Cast. Scale at 3. Wye at 10. Tee at 14. Eighteen, end of the line.',
  ],
  [
    ['down 45 main'],
    'Cleanout by the steps, toward the street. Clay. Roots at 8. Belly at 20. Main at 45. Retrieving. Thirty. Twenty, belly again. Eight, roots. Two. Zero. So three things. Roots at 8. Belly at 20. Clay all the way.',
  ],
  [
    ['down 44 main'],
    "Pushing downstream from the front cleanout. Counter's acting up. It says zero now. It was at twelve. There, it's back at fourteen. Roots at fifteen. Crack at twenty two. Main at forty four.",
  ],
  [
    ['down 36 stopped', 'down 30 main'],
    "Front cleanout, heading out. Clay. Fourteen, offset. Thirty six, blockage, camera won't pass. I'll try it from the other end. There's a cleanout down by the sidewalk. Toward the main from there. PVC. Five, coupling. Thirty, main.",
  ],
  [
    ['down 28 stopped', 'down 33 main', 'up 12 end-of-line'],
    "First push, hall bath toilet, heading out. Cast iron. Ten, scale. Twenty eight, stopped at a sharp bend. Second push, yard cleanout, to the street. Clay. Nine, roots. Thirty three, main. Third push, yard cleanout, to the house. Clay. Four, crack. Twelve, that's the sharp bend from the other side, end of the line.",
  ],
  [
    ['down 40 stopped'],
    "Front cleanout downstream. Cast. Wye at six. Forty feet, it's plugged solid and the camera won't go one more inch.",
  ],
  [
    ['down 41 tank'],
    "Back cleanout heading for the septic. PVC. Roots at thirty. Tank at forty one. That's all she wrote.",
  ],
  [
    ['down 23 cleanout'],
    'Kitchen cleanout going downstream. Clay. Crack at nine. At twenty three I pop up in the yard cleanout.',
  ],
  [['down 52 main'], 'Front cleanout downstream. Cast. Wye at six. Main? Yep, there it is. Fifty two on the counter.'],
  [
    ['down 31 cleanout', 'down 40 main'],
    "Powder room toilet is off, heading down from the flange. Cast iron. Tee at eight. Crack at twenty six. At thirty one there's the yard cleanout overhead, so I'm zeroing it right here. Zero, and on toward the street. Clay. Roots at seven. Forty, city main.",
  ],
  [
    ['down 22 cleanout', 'down 35 tank'],
    "In at the washer box, going with the flow. PVC. Wye at five. Grease at twelve. Cleanout at twenty two, that's where I start over. Three feet, an offset. Nineteen, roots. Tank at thirty five.",
  ],
  [
    ['up 19 stopped', 'down 33 main'],
    "There's a two way under the deck, so first up to the building. Cast iron. Scale at four. Nineteen, hung up, it won't pass. Other way. Clay. Roots at eleven. Main at thirty three.",
  ],
];

describe('the runs of a talk', () => {
  it.each(talks)('%j', (runs, talk) => {
    const draft = draftWords(wordsOf(talk));
    const said = draft.runs.map(
      (run) => `${run.direction === 'upstream' ? 'up' : 'down'} ${run.end?.at ?? '-'} ${run.end?.reason ?? '-'}`,
    );
    expect(said).toEqual(runs);
  });

  it('flags what was found in a run that may be none', () => {
    const draft = draftWords(
      wordsOf(
        'Cleanout at the base of the stack, headed out. Four inch clay. Roots at nine. Main at forty. Back. Going up. Three inch. Offset at six.',
      ),
    );
    const last = draft.observations.find((item) => item.kind === 'offset-joint');
    expect(last?.review.map((flag) => flag.reason)).toContain('run-unsure');
  });
});

it('counts no place that a summary repeats of another run among those the camera came to in the last one', () => {
  const draft = draftWords(
    wordsOf(
      "Front cleanout, heading downstream. Four inch clay. Roots at nine. Offset at eighteen. Hole at forty four. City main at fifty five. Now same cleanout up toward the house, reset to zero. Cast iron. Tee at six. Can't get past the bend at twenty. To sum up, roots at nine, an offset at eighteen, a hole at forty four, main at fifty five.",
    ),
  );
  expect(draft.runs.map(({ track }) => Math.max(...track!.map(({ feet }) => feet)))).toEqual([55, 20]);
});

describe('a run that nothing announces', () => {
  const found = (talk: string) => draftWords(wordsOf(talk)).observations.map(({ kind, at }) => `${kind} ${at}`);

  it('begins with the first thing told in bits', () => {
    expect(found('Short one today. Wye. Kitchen. Seven. Clean. Twelve. Roots.')).toEqual(['wye 7', 'roots 12']);
  });

  it('begins with the pipe and its size, told before anything is announced', () => {
    expect(
      found("Six inch clay. Manhole's behind the shed, so I'm going in there, up to the house. Nine, a crack."),
    ).toEqual(['pipe 0', 'crack 9']);
  });
});

describe('the pipe a run begins in, told with how far it goes', () => {
  const found = (talk: string) =>
    draftWords(wordsOf(`Front cleanout, heading downstream. ${talk}`)).observations.map(
      ({ kind, at }) => `${kind} ${at}`,
    );

  it.each([
    'We have iron from zero to thirteen, then clay.',
    'Clay for the first thirteen feet, four inch, and at thirteen it becomes cast iron.',
    'Four inch cast iron for thirteen feet and then clay.',
    'PVC out to thirteen, then clay.',
  ])('turns where that ends: %s', (talk) => {
    expect(found(talk)).toEqual(['pipe 0', 'material-change 13']);
  });
});
