/** Groups of words that descriptions of several kinds share, in the notation of `words` (see kind.ts). */

/** What joins a thing to what is said of it: "the joint's open", "the bell has dropped". */
export const is = "'s|is|are|has|have|'ve|was|were|has_been|'s_been|have_been";

/** What a wall breaks into. */
export const parts =
  'piece|pieces|chunk|chunks|section|sections|hunk|hunks|shard|shards|wedge|slab|segment|fragment|fragments|portion';

/** Where two pipes meet. */
export const joints = 'joint|joints|hub|hubs|bell|bells|spigot|spigots|socket|collar';

/** What lies round a pipe. */
export const earth = 'dirt|soil|mud|earth|ground|sand|silt|fines';

/** The upper half of a pipe, which comes down first. */
export const roof = 'top|crown|roof|ceiling|lid_of_the_pipe';

/** How water or soil comes in. */
export const flowing =
  'coming|running|dripping|dribbling|leaking|getting|pouring|trickling|seeping|weeping|streaming|entering|spraying|bubbling|squirting|gushing|oozing|shooting|jetting|spurting';

export const plants =
  'tree|trees|maple|oak|willow|elm|sycamore|poplar|cottonwood|birch|pine|fig|ficus|magnolia|hedge|shrub|bush|ivy|wisteria|bamboo|eucalyptus|conifer|ash_tree|palm';

/** "We came out into it at sixty", "all the way to it, which is at forty": ways to say that a place was come to. */
export const arrivalsAt = (names: string): string => `
    i|we|and|it|she|camera|that|here_we|there_we|i_'ve|we_'ve|just get|gets|got|gotten|come|comes|came|make_it|made_it|makes_it|arrive|arrived|end_up|wind_up|brings_me|brings_us|takes_me|takes_us|gets_me|gets_us|puts_me|puts_us to|into|at|in the|your|our ${names} at|here|there|now; ^ and|so|okay|then? i|we? 've|have|just? get|got|come|came|made_it|make_it|arrived to|into|at the|your|our ${names} , #; ^ and|so|okay|then? i|we? 've|have|just? got|came|made_it|arrived to|into|at the|your|our ${names} $; got|came|made_it|arrived to|into|at the|your|our ${names} , #;
    to the|your|our ${names} at #; to the|your|our ${names} , which|that|and is|'s|that_'s at? #; ${names} 's|is at # $;
`;
