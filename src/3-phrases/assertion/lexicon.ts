/**
 * Words that change what is claimed about a thing, on five separate axes, after the design of NegEx and ConText
 * (Chapman 2001, Harkema 2009): trigger, direction, scope, and pseudo-triggers that look like a trigger and are none.
 * The lists are our own, for spoken trade talk; the clinical lists fail on it.
 */
import { spoken } from '../../../shared/vocabulary/spoken.ts';
export type AssertionAxis =
  /** Said not to be there. */
  | 'denied'
  /** Said with doubt. */
  | 'hedged'
  /** True of pipes in general, not of this one now. */
  | 'general'
  /** Another time: what was seen, told or done before. */
  | 'past'
  /** What will, should or might be done. */
  | 'planned'
  /** Another line, another house, another person, the camera itself. */
  | 'elsewhere'
  /** Said with certainty: undoes a hedge. */
  | 'sure';

export interface AssertionCue {
  readonly axis: AssertionAxis;
  readonly reaches: 'forward' | 'backward' | 'sentence';
}

interface CueList {
  readonly cue: AssertionCue;
  readonly words: readonly string[];
}

const cue = (axis: AssertionAxis, reaches: AssertionCue['reaches']): AssertionCue => ({ axis, reaches });

/** How many tokens a forward or backward cue reaches. Five stops the bleed into the next finding where no full stop was printed. */
export const REACH_TOKENS = 6;

export const assertionCues: readonly CueList[] = [
  {
    cue: cue('denied', 'forward'),
    words: spoken`
      negative|nil|zilch|zip|nada|nix on|for|with? the|any?; absent ,|are|is; no; not a; not any; not one; no sign of; no signs of; no evidence of; no trace of; no hint of; without;
      without any; free of; clear of; zero; neither; nor; nor any; never; never saw; never did see; never had;
      don't see; don't see any; don't see no; didn't see; didn't see any; didn't see no; haven't seen;
      haven't got; hasn't got; ain't no; ain't got; ain't any; isn't any; isn't a; isn't; wasn't; wasn't any;
      aren't any; aren't; weren't any; there aren't; there isn't; don't find; didn't find; can't find;
      couldn't find; won't find; don't have; doesn't have; doesn't hold; didn't hold; not seeing; not see;
      did not see; do not see; have not seen; nothing in the way of; not a lick of; not a speck of;
      not a bit of; not a hint of; not a trace of; not a drop of; not a sign of; not a single; nary a;
      none of the; nothing; hasn't; haven't; has not; have not; is not; was not; are not; were not;
      not seeing any; could not see any; couldn't see any; cannot see any; can't see any; cannot see a; can rule out; cannot find; nobody; absence of; ruled out; rule out any; saw no;
      see no; seeing no; found no; find no; had no; have no; has no; shows no; showing no; with no; lack of;
      lacking; that 's not; it 's not; they 're not; not; didn't; doesn't; don't; won't; nope no; hardly any;
      didn't notice any; don't notice any; didn't come across any; negative for; negative on; not even a;
      no more; nowhere; didn't spot any; nor a; void of; devoid of; not observed were; was gonna say;
      was going to say; was about to say; almost said; almost called; thought i had; thought i saw;
      thought that was; thought it was; thought there was; would have sworn; not seen were; not found were;
      absent were; not noted were; not present were; not sighted; at no point; at no time; free from; not found a|an|any;
      've not found; 've not seen; have not come across; 've not come across; didn't run into; never ran into;
      haven't run into; never came across; haven't come across; never run across; don't|didn't think|believe there 's|is|are|was|were;
      don't|didn't think|believe it|that|this|they 's|is|are|was|were|'re; wouldn't call it|that|this|them;
      would not call it|that|this|them; 'd not call it|that|this|them; wouldn't say there|it|that 's|is; doubt there|it|that 's|is|are;
      no visible; no obvious; no real; no significant; no major; no active; no apparent;
    `,
  },
  {
    cue: cue('denied', 'backward'),
    words: spoken`
      not observed; not seen; not found; not present; not there; not noted; were not; was not; weren't;
      isn't one; there isn't; aren't any; don't find; nowhere; none; none seen; none observed; none noted;
      none found; absent; not sighted; unsighted; hasn't got any; don't have any; isn't there; ain't there; negative; zero; wasn't any;
      isn't any; ruled out; there weren't; no; nil; didn't see any; didn't see one; don't see any;
      don't see one; not one; not any; not a one; haven't seen any; nope; don't find a one; zip; nada;
      couldn't find any; none whatsoever; but it isn't; but it ain't; but it 's not; but it is not; but it wasn't;
      but they aren't; but it was not; isn't|aren't a|an problem|issue|concern; is|are not a|an problem|issue|concern;
    `,
  },
  {
    cue: cue('hedged', 'forward'),
    words: spoken`
      maybe; there might; it might; that might; there may; it may; that may; there could; it could;
      might possibly; looks suspiciously like; may be; might be; might just be; could be; could just be;
      possibly; possible; perhaps; i think; i believe; looks like maybe; looks like it might;
      looks like it could; looks like there might; seems; seems to be; seems like; appears; appears to be;
      want to say; want to call; can't rule out; cannot rule out; couldn't rule out; wouldn't rule out;
      unless i miss my guess; if i had to guess; i 'd guess; my guess is; conceivable; conceivably; suspect;
      suspected; neither confirm nor rule out; can neither confirm nor; a hunch about; a hunch there 's; have a hunch; almost sure;
      nearly sure; percent sure; percent certain; percent that; a coin flip; coin toss; i wonder if; i wonder whether;
      wondering if; fair chance; good chance; better than even; suspicious of; suspicion of; unconfirmed; questionable; may just be; may well be;
      i 'm thinking; potential; potentially; not sure|certain|positive if|whether; can't tell if; couldn't tell if;
      can't tell whether; what might be; what could be; what may be; what appears to be; likely; probable;
      probably; presumably; suspect a; wouldn't be surprised; maybe a; be a maybe; i 'd almost say;
      almost looks like; it|that|this|there can be a|an; may|might|could have a|an|some|got; a|the|some|any chance|possibility;
      question mark on; question mark against; might|may|could be seeing|looking; sort of looks like; kind of looks like; looks kind of like; resembles;
    `,
  },
  {
    cue: cue('hedged', 'backward'),
    words: spoken`
      maybe; possibly; perhaps; i think; i guess; i believe; can't tell; couldn't tell; cannot tell;
      cannot be certain; not confirmed; unconfirmed; not sure; i 'm not sure; can't swear; won't swear;
      wouldn't swear; can't call; a coin flip; perhaps not; it might not be; can't make up my mind; can't say for sure; couldn't say; hard to tell; hard to say; could be a shadow;
      might be a shadow; may be a shadow; might only be; may be only; could be just; might be just; may just be;
      could just be; might just be; wouldn't bet; not positive; not certain; not a hundred percent; not 100;
      don't quote me; if that; or maybe not; maybe not; or not; still a maybe; as a maybe; a maybe;
      call it possible; call it a maybe; can't be sure; can't be certain; cannot confirm; can't confirm;
      couldn't confirm; could not confirm; needs a second look; needs another look; i may be wrong;
      i could be wrong; i might be wrong; i 'm guessing; i suppose; i may be imagining; imagining it;
      either way; question mark; unclear; inconclusive; suspected; to be confirmed; ain't gonna swear;
      not going to swear; don't hold me to; could be wrong; if i had to guess; or a shadow; or it may be;
      or it might be; or it could be; wouldn't testify; not one hundred percent; hard to be sure; i assume;
      or so it looks; or could be; might|could|may be nothing; could be wrong; i might be; can't make it out; can't make that out;
      don't quote me; don't hold me; won't swear; shan't swear; not swearing; can't confirm; cannot say; can't say; too dark to; too murky to;
      tough to tell; tough to say; difficult to tell|say; hard to make out; put it down as a maybe; a question; with a question; remains a possibly;
    `,
  },
  {
    cue: cue('general', 'sentence'),
    words: spoken`
      some|most|they|people|folks|plumbers|somebody|someone 'd|would|might|could|may call|write|log; a good|bad|poor|proper|failed|typical|new liner|joint|sag|belly|break|crack|offset|connection|wye|repair looks|is|has|does|will|should|makes|gets; ^ getting|pushing|threading|working|driving|steering a|the|this|any? camera|head|cable|rod|thing? around|past|through|over|by; if the|an|your|that old|original|host|existing? pipe|line|sewer; when|once|after|until the|these|those roots|grease|joints come|grow|get|start|builds; asked|asking if|whether a|the;
      i|we|you|they 'd only; a lot|lots|most|many|plenty|half|all of these|those|your|the_old old|older? lines|pipes|houses|joints|sewers|laterals|clay|iron; sometimes; usually; typically; often; generally; normally; as a rule; every time; always; you 'll see;
      you 'd see; you 'll find; you see a lot; you get; you often; wants to; want to go; you 'd think;
      you would think; you know by; shows up as; say you; sooner or later; an offset is; a belly is;
      in this part of town; in a yard like this; somebody else left; people ask; people think; people say;
      folks think; folks ask; most of the; half of them; in general; tends to; tend to; this age; these days;
      back then; in those days; that era; they used to; was the standard; means the pipe; means that;
      is what we call; we call; they call; that 's what i 'd call; what is a; what do i mean; comes in short;
      comes in * sections|lengths|sticks|joints; any time; whenever; if you see; if you get; if you ever; if i; if we; if they; if he; if she;
      everybody says; everyone says; when you see; when you get; if it; a chance for; the reason; because roots;
      where your; how do you; how does; why do; why does; supposed to; in case; looks for; look for;
      don't confuse; not to be confused; difference between; a lot of houses; every house; all these houses;
      the thing about; the thing with; the problem with; nine times out of ten; as opposed to; for example;
      for instance; rule of thumb; remember that; what causes; is caused by; known for; famous for; notorious;
      eventually; over time; over the years; in theory; one of these days; someday; one day; good for a; love a;
      is|are when; is what you; when|once roots|grease|it|they|you get|gets; once * get|gets in;
      if there 's|is|are; what 's a|an; what is an; in this trade; in this business; in # years; in a few years; years from now; give it # years;
      some day; one good freeze; one more winter; and you 've got a; means no; mean no; you can|can't line|fix|cut|jet|snake|dig|repair|reline|save|seal|patch;
      a liner doesn't|won't|can't|follows; liners don't|won't|can't; lining doesn't|won't; that tree means; bound to be; bound to have;
      some|folks|people|plumbers|inspectors|they|others call|calls|say that|it|this|these|those|anything; hear me|us|people|him|them say|call|talk; we|i|they|you 'd call anything|something|one|those; that 's when a|the|one|you|two|your; you|they|we can|could|might|may get|have|end_up_with|wind_up_with|run_into a|an|some|one; houses|lines|pipes|yards|jobs like this|these|that; where you|people|they live|work;
      loves; textbook says; is basically; hate; love;
    `,
  },
  {
    cue: cue('past', 'sentence'),
    words: spoken`
      yesterday; last week; last month; last year; last winter; last spring; last summer; last fall; last time;
      this morning; years ago; months ago; weeks ago; days ago; year ago; a while back; a while ago; back in # ,|when|they;
      used to; told me; tells me; told us; told them; told him; told her; seller said; sellers said; owner said;
      owner says; owners say; seller says; agent said; agent says; listing says; disclosure; they said; he said;
      everybody said; everyone said; somebody said; someone said; we had; he told; she told; they told;
      she said; he says; she says; he claims; she claims; they claim; they say; seller did say; supposedly;
      according to the; the previous; previous owner; previous inspector; previous report; prior report;
      earlier report; had it; had them; had roots; they had; he had; she had; i had a; i had one; i once;
      i found a; i pulled; once found; was told; were told; reported; snaked; backed up; got backed up; i did a;
      i did one; the one i did; i saw a; i saw one; i remember; reminds me; years back; in march; the plumber;
      their plumber; my old boss; my granddad; my grandfather; my dad; my father; my uncle; my brother;
      my mother; my cousin; my daughter; my son; my wife; my husband; my neighbor; my sister; my aunt; my buddy;
      my first; swears; swore; wrote that; wrote it up; report said; report says; disclosure says; disclosure said;
      insists; insisted; promised; promises; she|he|they thinks|think|thought|figures|figure|figured|reckons|reckon|believes|suspects|suspected|blames|blamed;
      she|he|they 's|is|are|'re|was|were worried|afraid|scared|convinced|sure about|of|that|it; blamed it; i 've seen; i have seen; i seen; you asked; you were asking;
      you wanted to know; you want to know; you|they|he|she|buyer|buyers|seller|agent|owner|client wondered|was_wondering|were_wondering|'re_wondering|'d_wondered|worried|was_worried|were_worried about; you|he|she|they 'd|had asked; what you|they|he|she|the_seller|the_buyer|the_agent were|was worried|asking|wondering about; was asking; asked me; asking me; asked whether|if|about; wondering whether; the last guy|fellow|inspector|plumber|company|crew|outfit|man;
      the other guy|fellow|plumber; the first plumber|guy; somebody|someone wrote; had told; in my day; back in the day; in my time; when i started; in oh #;
      plans|plan|drawing|drawings|map|maps|survey|blueprint|blueprints|sketch|as_built|as_builts|gis put|puts|show|shows|say|says|have|has|had|showed|said;
      i|we can|could hear|smell; report|disclosure|listing|paperwork|inspection_report mentions|mention|mentioned|notes|noted|lists|listed|calls|called|shows|showed|has|had; they|people|folks|everybody|neighbors 're|are saying|telling; it says here; says here; back in oh|nineteen|two_thousand|the_day|the_sixties|the_seventies|the_eighties|the_nineties; in every house; i|we hear|smell;
      inspector|guy|fellow|company|crew|plumber|outfit|man|lady|outfit before me|us|him|this; permit|permits|bill|invoice|record|records|receipt|work_order says|say|shows|show|said|has|calls; city|county|town|utility|somebody|they replaced|relined|relaid|moved|jetted|flushed the|that|their|this * main|sewer|manhole|lateral|tank;
      according to my|your|his|her|their|that|this|a; going by the plan|plans|drawing|drawings|map|sketch; on the plan|plans|drawing|drawings|map;
    `,
  },
  {
    cue: cue('planned', 'sentence'),
    words: spoken`
      i 'd get; i 'd have; i 'd want; i 'd recommend; i 'd suggest; i 'd clean; i 'd cut; i 'd jet;
      i 'd replace; i 'd fix; i 'd dig; i 'd line; i 'd keep; i 'd watch; i 'd budget; i 'd start; i 'd do;
      recommend; recommendation; needs to be; need to be; need to; needs a; should get; should have;
      get a price; get it; get that; get those; get them; get a quote; have somebody; have someone; have it;
      have them; will need; you 'll need; you 'll want; you 're going to want; going to need; want to get;
      dig up; cut those; cut the; clear the; jet it; jet the; clean the; keep an eye; watch the; watch that;
      fix the; fix that; replace the; replace it; before you; before they; next time; later on; tomorrow;
      next week; next month; next year; in a year; i would want; i would get; i would have; i would recommend;
      ask the seller; ask for; call the city; call a plumber; somebody needs; someone needs; has to be;
      have to be; ought to; to do list; price on; quote on; a quote for; budget for; plan on; don't plant;
      if it were my; if it was my; were it mine; was it my; send the video; send a; looking for; checking for; searching for; hunting for; watching for; on the lookout; look out for;
      i 'd|would only call|say|mark|list it|that|this|them; i 'll|we_'ll point_out|call_out|show_you|tell_you|mention|let_you_know; i|we|i_'d|we_'d|would estimate|expect|guess|reckon|figure the|that * main|tank|street|sewer; we 'll see if|whether|how; let 's see if|whether; see if there; let you know; i 'll call it out; hopefully; hoping; let 's hope; fingers crossed;
      i 'd expect; would expect; i expect; surprised if; surprised to; worried about;
      get|have|getting|having the * dug|lined|cut|jetted|replaced|fixed|repaired|cleaned|relaid|relined|snaked|pulled|descaled|out;
      dug up; relaid; relined; jetting the; lining the; cutting the; do something about;
      we should|ought_to|oughta; we|i|you should|ought_to|oughta|expect_to|hope_to|hoping_to|hopefully hit|see|find|reach|meet|be_at|come_to|get_to|run_into|be_hitting|be_seeing|be_coming; pump the; flush it;
      pull the; don't|do_not|never accept|buy|settle|let|allow|bother;
    `,
  },
  {
    cue: cue('elsewhere', 'sentence'),
    words: spoken`
      in|on the|that|his|her|their|my|your hedge|hedges|tire|tires|truck|shed|van|mower|bushes|hallway|bedroom;
      fence|hedge|garage_door|back_door|front_door|screen_door|railing|carpet|wallpaper|ceiling_fan|listing 's|is|was|has|had|needs; road|street bends|turns|curves|slopes;
      hand|pass|grab|bring|toss me|us that|the|a|my|your; next door; the neighbor; neighbor paid; neighbors had; the neighbour; the neighbours; the neighbors;
      across the street; down the street; up the street; the next street; another house; other house;
      last house; different house; the house i; the place i; last job; the last one; other job; another job;
      my house; my place; my own line; my own house; my line; at my; in my yard; on my lens; my lens;
      my own lens; lens cover; my camera; the camera lens; my screen; my phone; my knee; my back; my truck;
      the truck; the trailer; my boot; my boots; my glove; my gloves; my ladder; my reel; my coffee; house down;
      a client; a customer; one house; one guy; a guy; some guy; this lady; a lady; other people; other jobs;
      brother in law; mother in law; father in law; your neighbor|neighbour|neighbors|neighbours; neighbor|neighbour|neighbors has|have|had|'s;
      watch your step|head|footing; by|near|beside|on the steps|stairs|stoop|fence|truck|curb; driveway|sidewalk|yard|lawn|patio|roof has|'s_got|got a; in the sidewalk|lawn|ceiling|drywall|fence; other unit; next unit; upstairs unit; unit next door; the tree 's a|the|been|over|on|in_the|not|gonna|going|out; tree 's roots; all over the yard|lawn|driveway; in the lawn; basement window; cellar window;
      the cable 's; the cable is; this cable; my cable; the reel 's; the reel is; this reel; on my hands; my hands; my windshield; the sidewalk over; my sleeve; my jacket;
    `,
  },
  {
    cue: cue('sure', 'forward'),
    words: spoken`
      definitely; no doubt; no question; without a doubt; certainly; for sure; clearly; obviously;
      almost certain; pretty sure; i 'm sure; sure enough; positive; absolutely; undoubtedly; no mistaking;
      no mistake; no two ways; unmistakable; unmistakably; can't miss; plain as day; confirmed;
      that 's definitely; there 's no question;
    `,
  },
];

/** Stretches that hold a cue and are none. They switch off every cue inside them. */
export const pseudoCues: readonly string[] = spoken`
  don't|doesn't|didn't|won't want|accept|let|allow|need; don't_you|do_not|you_don't want;
  whether * like|likes|want|wants it|to or not; believe it or not; like it or not;
  new|worse|changed since last year|time|week|month|winter|summer|spring|fall; it_'s|that_'s|this_is|they_'re new since;
  we should note|mention|mark|log|write|say|call|record|point_out;
  no great|real|big|major|serious|huge drama|issue|issues|deal|trouble|concern|concerns|problem|problems|worry|worries|harm|surprise|shock|hurry|mystery; no drama|trouble|concern|concerns|harm|fuss|bother|biggie|complaints|mystery|harm_done; bet my truck|house|boots|hat|life|lunch|shirt|pension|paycheck|license;
  first|only|worst|biggest|best|finest|deepest|last|longest|nicest|second * i|we 've|have seen; i|we 've|have seen here|so_far|in_this|on_this|in_here|all_day|today;
  down|up|across|on the street side|end|half|direction|way|cleanout|opening|leg; if you|we|they want to call; if you 'd|could|can call it|that; you|folks|some|they might|could|may call it|that|this;
  nothing too|very|real|really|all_that|that|so bad|heavy|serious|severe|terrible|big|crazy|dramatic;
  no shortage of; no lack of; never a lack of; say i see no; say there is no; say there 's no;
  can't say i don't see; can't tell me that isn't; tell me that isn't; not as if there 's no; as if there 's no;
  it 's not as if; isn't merely; not merely; no mere; never thought; never expected; nobody could call;
  nobody disputes; nobody could say; not like there 's no; won't deny; can't deny; no denying; don't tell me;
  not for nothing; not nothing; isn't nothing; ain't nothing but; 
  no problem; no problem ,; no kidding; no joke; no surprise; no wonder; no lie; not gonna lie;
  not going to lie; i 'm not gonna lie; not kidding; no wait; no , wait; wait , no; no hang on; no , hang on;
  no hold on; no , hold on; no sorry; no , sorry; no two ways; no hub; no hub band;
  no hub coupling; no idea; no worries; no rush; no matter; no big deal; no offense; no judgement; no judgment;
  no good; no thanks; no sir; no ma am; no ma'am; no way around; no longer; no fun; no less than; no more than;
  no better; no worse; no further; no farther; no change; no access; no picture; no view; no visibility; number;
  without question; without wrecking; without breaking; without a wrench; not only; not just;
  not to mention; not sure; not certain; not positive; not a lot; not a lot of; not much; not much of; not many;
  not too many; not too much; not bad; not too; not so; not very; not super; not overly; not especially; not particularly; not too bad; not so bad; not terrible; not great; not surprised;
  not surprising; not moving; not in use; not used; not connected; not confirmed; not totally; not entirely;
  not a big; not a huge; not a bad; not a terrible; not the worst; not the end; not the prettiest; not a deal;
  not deep; not level; not same; not the same; not lined up; not going anywhere; not going to; not gonna;
  not far; not long; not quite; not yet; not heavy; not reached; not accessible; not live; not a hundred;
  not 100; not that there isn't; not that there aren't; no end of; no small; no missing; no hiding; no mistaking; no way that|it|this 's|is not;
  no way that|it|this isn't; can't say there 's|is|are no; can't say there isn't|aren't; won't|wouldn't say there 's|is|are no;
  not say there 's|is|are no; can't|don't tell me that|it|this|there 's|is not|no; nobody told; nobody mentioned; nobody said; nobody knew; nobody noticed;
  no two; no different; no exception; no stranger; no secret; no thank; no name; not draining; not seated; not supposed; not touching;
  not holding; not straight; not round; not getting; not able; not connected; can't get past;
  can't get by; can't get through; can't get around; can't see; can't go; can't push; can't pass; can't tell;
  can't say; can't swear; can't help; can't believe; can't make; couldn't get; couldn't go;
  couldn't see a; couldn't miss; won't lie; won't swear; won't go; won't pass; won't fit; won't make;
  don't know; don't like; don't love; don't think; don't worry; don't ask; don't care; don't mind; don't laugh;
  don't line up; doesn't line up; didn't line up; don't meet; doesn't meet; didn't land; doesn't look;
  don't even; don't flush; don't get me wrong; don't hold me; don't quote; doesn't seat; doesn't drain;
  don't tell; don't you; didn't know; didn't expect; didn't notice that; didn't mention; didn't call;
  didn't say; didn't reach; didn't see it going; didn't see it on; didn't see that; didn't use; didn't want;
  didn't even; didn't get; didn't make it; never mentioned; never mention; never called; never used; never got;
  never cleaned; never fixed; never reached; never made; never bedded; never empties; never did call;
  never seen; never seen so; isn't seated; isn't bad; isn't pretty; isn't great; isn't too; isn't just;
  isn't it; isn't round; isn't holding; isn't draining; wasn't holding; wasn't lying; wasn't kidding;
  wasn't expecting; aren't lined up; aren't they; aren't meeting; haven't been; hasn't been; haven't moved;
  nothing to write; nothing fancy; nothing i can do; nothing to do with; nothing but; never mind;
  nothing but trouble; no other; not the only; isn't the only; no denying; no getting around; no escaping;
  no need; no point; no room; no warranty; no permit; no charge; no time; no sense; no cap; no fitting;
  no cover; no lid; no light; no power; no reason; no telling; might as well; could use; could you; could i;
  could we; could stick; could lose; could file; could fit; could get; could put; could eat; could not;
  could lay; could see; could tell; could hear; could smell; could feel; could fit; could never; may i;
  kind of thing; kind of stuff; kind of pipe; what kind of; that kind of; this kind of; sort of thing;
  one of a kind; which could; looks like a joint; appears in; can be seen; could stick my; could run;
  may as well; couldn't be; couldn't land; might want; could almost; that could be worse; could be worse;
  could have been worse; in the past; past that; past it; past the; always wanted; as always; means business;
  by all means; love it; don't love; love that; hate to; i hate; get it on; got it; get past; get by;
  get through; get closer; get a better; get this; get the camera; get around; the cut; you get the;
  you get a joint; still; hold on; yet;
`;
