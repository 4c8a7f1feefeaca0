import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const corrosion = {
  name: 'corrosion',
  group: 'defect',
  title: 'Corrosion',
  plural: 'corrosion',
  takes: ['to', 'position', 'clock', 'degree', 'percent'],
  words: spoken`
    corrosion; corroded; corroding; rotted; rotten; rotting; rotted out; rotting out; rusted out; rusting out;
    channeled; channelled; channeling; channelling; channel cut; channel; groove; grooved; eaten out; eaten away;
    eaten up; eaten; pitting; pitted; deteriorated; deteriorating; deterioration; spalled; spalling; spall;
    exposed aggregate; scoured; eroded; erosion; gouged; worn; worn thin; worn away; worn out; wearing thin; wasted;
    thinned; thinning; delaminated; flaked away; crumbling; crumbled; crumbly; troughed; trenched;
    acid attack; graphitized; disintegrating; disintegrated; decayed; decaying; decay; perished; etched; wore out;
    wore away; wore thin; wore down; worn down; worn off; channel rot; pitted out; eroding; corroding away;
    corroded away; corroded out; wasting away; wasted away; washed thin; rotting away; rotted away; rusting away;
    rotten out; gouging; gullied; guttered; scalloped; channel worn; groove worn; trench worn; deteriorating badly;
    exposed stone|stones|rebar|reinforcement; sulfide damage|attack|corrosion; acid damage; acid attacked;
    metal|wall|section|material loss; gone|turned|going to gravel|mush|nothing|lace|powder|dust|swiss_cheese|oatmeal|pulp; corroding|rotting bottom|floor|invert|walls; wasted thin; ate up|away|out; hollowed out bottom;
  `,
  signs: spoken`
    bottom 's|is gone|out; invert 's|is gone|out; paper thin; getting thin; getting really thin; going to mush;
    gone to mush; all to mush; mushy; stones in the concrete; stones showing; stone showing; aggregate showing;
    see the aggregate; see the stones; see the stone; rusted away; rusted thin;
    bottom has|'s rotted|rusted|eaten|worn|channeled; bottom rotted; rotted bottom; ate out; ate up; ate the bottom;
    chewed away; gnawed; iron's getting thin; wall is thin; wall 's thin; its own little gutter; own gutter;
    soft and crumbly; gone soft;
    bottom|invert|floor|flow_line|flowline 's|is|has|are * gone|missing|chewed|wore|ate|shot|rotten|paper_thin;
    bottom of the|this|it|our pipe|line|iron 's|is * gone|missing|rotted; floor of the pipe 's|is gone|missing;
    no bottom|floor|invert left|to|in_it|in_this|on_it;
    isn't|ain't|is_not|hasn't any|a|much|got_a|no? bottom left|to_it|in_it|to_this;
    lost|losing|lose|loses|missing the|its|his|most_of_the|all_of_the|some_of_the? bottom|invert|floor;
    where the bottom|invert|floor used|ought|should|was;
    ate|eats|eating|chewed|chews|gnawed * bottom|invert|crown|floor|wall|iron;
    bottoms|invert * eaten|rotted|rusted|channeled|worn|corroded|gone;
    acid|gas|gases|sulfide|sulfur|h2s|fumes * eaten|ate|eating|attacked|rotted|chewed * top|crown|bottom|wall|concrete|cement;
    acid|gas|gases|sulfide|h2s 's|is|has? eaten|ate|eating|attacked|attacking;
    h2s|h_2_s|hydrogen_sulfide|acid|gas damage|attack|rot;
    wall|walls|iron|metal 's|is|are|has|have|getting|gets|gone|looks * thin;
    getting|gets|gone|gotten|worn|wearing|pretty|mighty|awful|real|very thin; thin as paper;
    like|as tissue|eggshell|an_eggshell|lace|tinfoil|tin_foil;
    trench|gutter|gully|rut|ditch|channel|groove|trough worn|cut|eaten|carved|down|along|in * bottom|invert|floor;
    trench|gutter|gully|rut|ditch cut|worn|eaten|carved;
    aggregate|stone|stones|rebar|gravel 's|is|are? showing|exposed|visible; bare aggregate;
    see|seeing the aggregate|stones|rebar|gravel_in_the;
    concrete|cement|wall|pipe|iron 's|is|has|gone|going|all|getting? soft|mushy|spongy|crumbly;
    washed|washing out of|from the bottom|invert;
    bottom|invert|wall|walls|crown 's|is|are|just? flaking|crumbling|falling_apart|coming_apart|flaking_away|flaking_off;
    flaking away; rusted to nothing; nothing left of the bottom|invert|floor; sharp edges where the|it;
    rust|corrosion 's|is|has? eaten|eating|chewed;
    bottom|invert|floor|pipe|concrete|iron|it|wall|walls * gone|turned|going to gravel|mush|nothing|lace|powder|dust|swiss_cheese|oatmeal|pulp|rust; stones|aggregate|gravel|rock|fibers|fibres|rebar sticking|poking|standing|coming|proud|bare out|up|through|exposed? of the? concrete|cement|wall|floor; cement|mortar|surface|concrete|paste 's|is|has * washed|eaten|worn|gone|etched out|away|off|down; bare|exposed rock|stone|stones|aggregate|gravel|rebar|steel; bottom|invert|floor|wall 's|is|has|are shot|toast|wasted|thin|soft|rotten|gone_soft;
  `,
  notWords: spoken`
    channel cat; tv channel; change the channel; rusted shut; rusted solid; rusted in; rusted on; rust never sleeps;
    eaten lunch; worn out from; i was worn; worn out boots; rust belt; rust color; rust colored; rusted closed;
    rusted tight; rust stain; rust stains; channel locks; channellocks; english channel; in the groove; rusty;
    rusted over; spoiled rotten; rotten egg; rotten eggs; smells rotten; rotted fence; rotten luck; worn carpet;
    rusted cap; cap is rusted; eaten a; eaten at; eaten all; eaten my; eaten yet; rust flakes; rust scale;
    rust buildup; rusty crust; corroded cap; cap threads; pitting soil;
    fence|deck|gate|post|sill|joist|stairs|steps|porch|siding|tree|stump|wood|beam|railing|truck|muffler|roof * rotted|rotten|rotting|rusted|corroded|eaten|decayed|worn;
    i 've|have|haven't|already eaten; eaten already|yet|breakfast|dinner|since|today|there|here_before; tooth decay;
    worn carpet|tires|gloves; thin ice|wall|wallet|skin; cap|lid|cap_'s|plug * corroded|rusted|rotted; bottom line;
    camera|cable|head 's|is? worn|wore; ground 's|is|gets soft; my|soil * soft; cement lining; groove of;
    groove for|in_the_hub|on_the; channel on|is_on; going soft on; bottom is gone from; soft soil|ground|spot;
    deteriorating weather;
    turned|gone to nothing|dust|mush in_the|on_me|out_there; gone to rust there_'s_a; bare rock in|on; exposed rock|stone on|in|by the street|yard|hill|wall; wall|walls are thin in|between|so; toast;
  `,
  misheard: [
    { heard: 'corrosive|collision|erosion|coercion|corruption', said: 'corrosion', needs: 'distance' },
    { heard: 'chandeliered|channel ling|channel wed', said: 'channeled', needs: 'nothing' },
  ],
  examples: {
    says: [
      {
        text: 'Scale from three to eleven. The invert is gone at thirteen.',
        gives: [
          { kind: 'scale', at: 3, to: 11 },
          { at: 13, position: 'bottom' },
        ],
      },
      {
        text: 'The floor is pitted and rotted. That commences about three foot in, it is bad, and it lets up at, lemme see, nine.',
        gives: { at: 3, to: 9, position: 'bottom', degree: 'heavy' },
      },
      { text: 'The invert has gone to gravel at nine.', gives: { at: 9, position: 'bottom' } },
      {
        text: "From nineteen to twenty six the invert is channelled out. It's severe.",
        gives: { at: 19, to: 26, position: 'bottom', degree: 'heavy' },
      },
      { text: "There's no bottom left at 22.", gives: { at: 22, position: 'bottom' } },
      { text: 'The walls are pretty thin at nineteen feet.', gives: { at: 19 } },
      { text: 'Acid has eaten the crown at 40.', gives: { at: 40, position: 'top' } },
      { text: 'Lost the bottom at eighteen feet.', gives: { at: 18, position: 'bottom' } },
      { text: 'Aggregate is showing on the bottom from 30 to 36.', gives: { at: 30, to: 36, position: 'bottom' } },
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
    never: [
      'The fence is rotted.',
      "The bottom's solid.",
      "I've eaten already.",
      'Cast iron always rusts from the inside.',
      'No corrosion to speak of.',
      'His truck is rusted through.',
    ],
    notYet: [{ text: 'Corrosion starts where the water sits.', gives: [] }],
  },
  report: {
    meaning: 'The wall of the pipe has been eaten away and is thinner than it was.',
    next: 'Have a licensed plumber judge how much wall is left.',
    glossary: 'Corrosion: pipe wall eaten away by rust or by what runs through it.',
  },
} as const satisfies Kind;
