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
