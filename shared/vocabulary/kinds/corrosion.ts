import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const corrosion = {
  name: 'corrosion',
  group: 'defect',
  title: 'Corrosion',
  plural: 'corrosion',
  takes: ['to', 'position', 'clock', 'degree', 'percent', 'inches'],
  words: spoken`
    corrosion; corroded; corroding; rotted; rotten; rotting; rotted out; rotting out; rusted out; rusting out;
    channeled; channelled; channeling; channelling; channel cut; channel; groove; grooved; eaten out;
    eaten away; eaten up; eaten; pitting; pitted; deteriorated; deteriorating; deterioration; spalled; spalling;
    spall; exposed aggregate; scoured; eroded; erosion; gouged; worn; worn thin; worn away; worn out;
    wearing thin; wasted; thinned; thinning; delaminated; flaked away; crumbling; crumbled; crumbly; rust hole;
    troughed; trenched; acid attack; graphitized;
  `,
  signs: spoken`
    bottom 's|is gone|out; invert 's|is gone|out; paper thin; getting thin; getting really thin; going to mush;
    gone to mush; all to mush; mushy; stones in the concrete; stones showing; stone showing; aggregate showing;
    see the aggregate; see the stones; see the stone; rusted away; rusted thin;
    bottom has|'s rotted|rusted|eaten|worn|channeled; bottom rotted; rotted bottom; ate out; ate up;
    ate the bottom; chewed away; gnawed; iron's getting thin; wall is thin; wall 's thin; its own little gutter;
    own gutter; soft and crumbly; gone soft;
  `,
  notWords: spoken`
    channel cat; tv channel; change the channel; rusted shut; rusted solid; rusted in; rusted on;
    rust never sleeps; eaten lunch; worn out from; i was worn; worn out boots; rust belt; rust color;
    rust colored; rusted closed; rusted tight; rust stain; rust stains; channel locks; channellocks;
    english channel; in the groove; rusty; rusted over; spoiled rotten; rotten egg; rotten eggs; smells rotten;
    rotted fence; rotten luck; worn carpet; rusted cap; cap is rusted; eaten a; eaten at; eaten all; eaten my;
    eaten yet; rust flakes; rust scale; rust buildup; rusty crust; corroded cap; cap threads; pitting soil;
  `,
  misheard: [
    { heard: 'corrosive|collision|erosion|coercion|corruption', said: 'corrosion', needs: 'distance' },
    { heard: 'chandeliered|channel ling|channel wed', said: 'channeled', needs: 'nothing' },
  ],
  examples: {
    says: [
      { text: "The bottom's rotted out at 24.", gives: { at: 24, position: 'bottom' } },
      { text: 'Corroded along the bottom from sixteen to thirty.', gives: { at: 16, to: 30, position: 'bottom' } },
      { text: 'Channeling at forty four, pretty bad.', gives: { at: 44, degree: 'heavy' } },
      { text: 'Invert is gone at 33.', gives: { at: 33, position: 'bottom' } },
    ],
    unsure: [
      {
        text: 'Might be corrosion on the crown at 12.',
        gives: { at: 12, position: 'top', status: 'suspected' },
        flag: 'suspected',
      },
      {
        text: "There's collision along the bottom at 20 feet.",
        gives: { at: 20, position: 'bottom' },
        flag: 'word-unsure',
      },
    ],
    never: ['Cast iron always rusts from the inside.', 'No corrosion to speak of.', 'His truck is rusted through.'],
    notYet: [{ text: 'Corrosion starts where the water sits.', gives: [] }],
  },
  report: {
    meaning: 'The wall of the pipe has been eaten away and is thinner than it was.',
    next: 'Have a licensed plumber judge how much wall is left.',
    glossary: 'Corrosion: pipe wall eaten away by rust or by what runs through it.',
  },
} as const satisfies Kind;
