/**
 * How people go back to a number they gave earlier and put another in its place, as text in which O is the number as it was
 * given and N any other: "I said O for the kitchen and I should have said N", "it runs through N, not O".
 */

const who = '(?:i|we|you|he|she|they)';
const gave =
  '(?:said|called|had|put|wrote|gave|told|logged|marked|noted|recorded|read|listed|entered|ended|started|began|reported|placed|shot|typed|counted|set|showed)';
/** "I said the kitchen was at O", "I'd put it down as O"; no other number and no stop stands between. */
const gaveOld = new RegExp(
  `\\b${who}(?: 'd| 've| have| had| just| first| originally| may have| might have)* ${gave}\\b[^NO]*\\bO\\b`,
);
const quotedOld =
  /\b(?:where|when|what|that|those|the) [^NO]{0,40}\b(?:called|given|listed|logged|marked|noted|recorded|said)\b[^NO]{0,20}\bO\b/;
const toward =
  "(?: feet| foot| and| but| it| that| this| he| she| i| we| they| is| 's| was| were| are| really| actually| now| should| ought| to| have| 've| 'd| been| be| said| say| read| reads| meant| mean| make| makes| more| like| closer| at| about| by| says| shows| put| instead| in| fact| truth| of| course| wrong| correction| sorry| no| not| well| rather| call| log| write| mark| record| only| just| out| for| the| reading| counter| footage| number| right| one| correct| true)*";
/** "O should be N", "I called it O, it's really N". */
const oldThenNew = new RegExp(`\\bO${toward} N\\b`);
const shouldBe =
  /\b(?:should|ought|meant|mistake|wrong|misread|misspoke|correct\w*|amend\w*|instead|actually|really|better|closer|make (?:it|that)|it 's|that 's|is|was)\b[^O]*\bN\b/;
const plainlyWrong = /\b(?:should|ought|meant|mistake|wrong|misread|misspoke|correct\w*|amend\w*|instead)\b/;
/** "N, not O", "N instead of O". */
const newNotOld =
  /\bN\b(?:[^NO]*\b)?(?:(?:and |but )?not|instead of|rather than|never)(?: at| on| to| from| the| really| exactly| about)* O\b/;
/** "It wasn't O back there, it was N". */
const notOldNew =
  /\b(?:not|wasn't|isn't|weren't|aren't|didn't \w+|doesn't \w+|never)(?: at| on| to| from| the| really| actually| quite| until| till)* O\b[^O]*\b(?:it|that|they|but|more like|instead)\b[^O]*\bN\b/;
/** "Change the O to N", "scratch O and write N". */
const changeOld =
  /\b(?:change|move|switch|swap|correct|fix|amend|revise|make|replace|scratch|strike|forget|ignore|cross out|shift|bump|adjust)\b[^NO]*\bO\b(?: feet| foot| there| and| that| out)* (?:to|into|with|write|put|say|call|make|it 's|that 's|should be|it is)(?: it| that| this| down| at| as| in| be| for)* N\b/;

/** "That O was wrong", "not O": another is to come. */
const oldWrong =
  /\bO\b(?: feet| foot| there| mark| number| figure| reading)*(?: was| is| 's| were)(?: wrong| off| a mistake| an error| no good| not right| incorrect|n't right| out)\b|\b(?:wasn't|isn't|not) O\b/;

/** "Let me fix the crack.", "she's correcting me": what is said next amends a thing that is named, whose old number is not said. */
const speaks = '^(?:so |okay |and |oh |now |alright |wait |actually |yeah |sorry )*';
export const amendsNamed = new RegExp(
  `${speaks}(?:(?:let me|lemme|let 's|i need to|i have to|i want to|i 'd like to|i gotta|i 've got to|please) )?(?:go back and )?(?:fix|change|move|update|revise|extend|stretch|amend|correct|adjust) (?:my |the |that |this |one )|\\b(?:amendment|correction|correct(?:s|ed|ing) me|update|revision)\\b|\\b(?:he|she|they) (?:says?|tells me) .*\\b(?:went|goes|ran|runs|started|starts|ended|ends|was at|should be)\\b`,
);
const namesEnd =
  /\b(?:extend|stretch|end|ends|ended|went|go|goes|ran|runs|through|until|till|out to|far end|stops|stopped)\b/;
const namesStart = /\b(?:start|starts|started|begin|begins|began|from|front|beginning)\b/;
/** Which end of a stretch a sentence speaks of, where it says so. */
export const endSpokenOf = (text: string): 'at' | 'to' | null =>
  namesStart.test(text) ? 'at' : namesEnd.test(text) ? 'to' : null;

/** Words that put a number given before in doubt: the right one is about to be said. */
export const disowning =
  /\b(?:but|wrong|mistake|misread|misspoke|error|off|slack|lag\w*|slipp\w*|rolling|moving|catch\w* up|caught up|behind|rewound|rewind|wound back|went back|gone back|played|not (?:right|what|it|so|true)|isn't|wasn't|ain't|actually|really|correct\w*|amend\w*|change|fix|should)\b/;
/** The number given first is looked at again and kept: "it reads N from this side, I'll keep O". */
export const keepsOld =
  /\b(?:keep|keeping|kept|leave|leaving|left (?:it|that) (?:at|as)|stick|sticking|stands|stay|stays|trust|trusting)\b(?!.{0,30}\bN\b)|\bgo(?:ing)? with O\b|\bO (?:is|was) (?:right|correct|good|fine)\b|\bhad it right\b/;
/** The new number is no more than a guess. */
export const guessesNew = /\b(?:might|could|may|maybe|possibly|probably|i think|i guess|or)\b/;
/** A sentence that gives the right number: "it's N", "N is the true number for that". */
export const givesNew =
  /^(?:no |and |so |well |oh |okay |sorry |yeah |but |actually |really )*(?:it|that|this|they|those|should|make|call|put|say|the|i|we|he|she|correct|change|log|write|really|actually|N)\b[^N]*(?:\bN\b|$)/;

export interface Recalled {
  /** The new number stands in the same sentence, and how sure it is that it replaces the old one; or it is to come. */
  readonly gives: 'plain' | 'near' | 'later';
}

export const keepsRecalled = (text: string): boolean =>
  keepsOld.test(text) && (gaveOld.test(text) || quotedOld.test(text));

/** Whether a sentence gives an old number anew: plainly, only where both are near one another, or with the new one to come. */
export function recallsNumber(text: string): Recalled['gives'] | null {
  if (keepsOld.test(text)) return null;
  const hasNew = /\bN\b/.test(text);
  if (hasNew) {
    if (newNotOld.test(text) || notOldNew.test(text) || changeOld.test(text)) return 'plain';
    const isTold = gaveOld.test(text) || quotedOld.test(text);
    if (isTold && (oldThenNew.test(text) || /\bO\b/.test(text)) && /\bO\b.*\bN\b/.test(text)) {
      const after = text.slice(text.indexOf('O'));
      if (plainlyWrong.test(after)) return 'plain';
      if (shouldBe.test(after) || oldThenNew.test(after)) return 'near';
    }
    return /\bO (?:feet )?(?:should|ought to|needs to) (?:be|read|say|have been)\b.*\bN\b/.test(text) ? 'plain' : null;
  }
  return gaveOld.test(text) || quotedOld.test(text) || oldWrong.test(text) ? 'later' : null;
}
