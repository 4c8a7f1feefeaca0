/** How much of it. "Some", "hairline" and "worse" give no degree. */

import type { Degree } from '../../../shared/vocabulary/attributes.ts';
import { spoken } from '../../../shared/vocabulary/spoken.ts';

export const degreeWords: Readonly<Record<Degree, readonly string[]>> = {
  light: spoken`
    light; lightly; minor; miner; slight; slightly; a little; little bit; a little bit; little bit of; a bit of; a bit of a; bit of; little bit of a; a bit;
    a touch of; mild; small amount; very little; precious little; just|only a few; only a little; just one or two; nothing much|big; barely any; a wisp of|here; a wisp; a few little; a tad; a smidge; a smidgen;
    nothing heavy|serious|severe|major|terrible; nothing too heavy|bad|serious|terrible; faint; not much; a dusting; a skim; trace; just a trace; wee bit; a skosh; thin layer;
  `,
  moderate: spoken`
    moderate; moderately; medium; middling; a fair amount; a fair bit; somewhere in between; fair amount|bit of;
    moderate amount;
  `,
  heavy: spoken`
    heavy; heavily; severe; severely; bad; badly; a lot of; a lot; lots of; lots; packed; packed with; major;
    massive; serious; seriously; thick with; a ton of; tons of; a whole lot; loaded; loads of; extensive; pretty bad;
    real bad; choked with; caked; caked on; plenty of; nasty; a mess of; terrible; big time; solid with;
    a good deal of; quite a bit; quite a bit of; quite a lot; quite a lot of; a whole bunch; a whole bunch of; gobs; gobs of;
    oodles of; heaps of; piles of;
  `,
};

/** Words that hold a degree and mean something else. */
export const notDegrees: readonly string[] = spoken`
  a? little|bit farther|further|along|ahead|on|way|ways|later|down_the|up_the; packed in? into|against|behind|between|around|under;
  daylight; day light; the light; lens light; camera light; light into|through|in|shining; there is|are|no|any light $; there is|are|no|any light ,; there is|no|any light on|in|at|from|to|through|left|there|here|coming|down|up|or; no light;
  goes|gone|went|going|turns|turned bad; like a bad; bad stuff|spot|spots|part|section|hip|tooth|teeth|habit|one; plugged|packed|stopped|blocked solid with;
  a bit of string|wire|wood|pipe|wall|tile|plastic|the|luck|rope|rag|cloth|chain; and a bit; a? little|bit worse|better|smaller|bigger|larger|wider|higher|lower|deeper|taller|beyond|later|faster|gutter|drain|tee|wye|fitting|branch;
  my|his|her|their|your * was|is|'s bad|heavy; heavy like; extra heavy; say heavy i|but|and; not bad; not all that bad|heavy; not so|very|that|too|real heavy|severe|thick; nothing like as bad|heavy;
  a little toy|plastic|car|piece|daylight|past;  no moderate; argument for light|moderate|heavy; heavy correction; light switch|bulb|bulbs;
  could|would|might|will get bad|worse|heavy; don't look|sound bad; less bad; worse than bad;
  the light; my light; a light $; a light ,; a light on|in|at|through|shining|shine|up|down|there|here|from|to|and|so|or|coming|that|which|is|'s|was|switch|bulb|head|fixture|pole|post|for|with|if; lights; light on it; light up; the light on; the light's; light bulb;
  light head; light reflecting; light turned; light switch; not a lot; not bad; not too bad; not so bad;
  not terrible; not heavy; nothing bad; not that bad; is it bad;
  is that bad; it's not bad; too bad; my bad; bad news; feel bad; bad luck; bad idea; bad day; bad back;
  bad knee; bad knees; not serious; not severe; nothing to get; inch|inches|half|quarter|eighth thick; not too heavy|severe|serious|thick; not very heavy; not that heavy; isn't heavy; isn't bad; how bad|heavy; as bad as;
  a little slower; a little faster; a little closer; a little longer; a little further; a little past;
  little past; a little ways; a little way; little while; a little before; a little after; a little short;
  a little girl; little boy; little guy; little dog; little one; little ones; little plastic; little red;
  little toy; little kid; a little nervous; little over; a little under; little farther; a little tongue;
  little camera; little help; a little bit further; little screen; little terrier; little green; little blue;
  a little cold; a little louder; little hairs; little stones; a little earlier; little branch; little car;
  a little more than; a little less; little more than; a little better; give me a little; a little time;
  little flap; little screw; a bit past; a bit further; a bit farther; a bit more; for a bit; in a bit;
  drill|every|that|this|first|last|other|next|same|big|good bit of; bit of luck|time|pipe|trouble|both|advice|news|history|line; a bit of a mess|pain|nuisance|trick|surprise|job|puzzle|drive|walk|challenge|squeeze|push|hurry|way; drill bit; a bit ragged; every bit; this bit; first bit; a bit before; a bit beyond;
  that bit; a bit closer; a hair past; back up a hair; a hair further; heavy stuff; heavy duty; heavy equipment;
  heavy truck; heavy rain; heavy clay; rain heavy; traffic heavy; a lot less; a lot more; a lot better;
  a lot worse; a lot of that in; a lot of times; a lot of people; a lot of these; a lot of houses; see a lot; that a lot; this a lot; those a lot; them a lot; it a lot; a lot in;
  a lot of the time; parking lot; thanks a lot; a lot to; a lot of folks; the lot; a lot number; lot; packed up;
  thick enough; inch|inches|feet thick; how thick; thick as; thick wall|walled; major road; bad shape in general; mild weather; minor detail; a pretty light; light rain;
  medium sized house; medium dog; bad weather; serious question; light snow; light drizzle; trace it;
`;
