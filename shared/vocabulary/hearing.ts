/** What the recogniser is told about the talk before it listens. Names of things come from `kinds/`, materials and services. */

/** A short stretch of talk in the form that the recogniser should print: digits, "o'clock", the trade's own spellings. */
export const hearingPrompt =
  "Heading downstream from the cleanout, 4 inch cast iron. A wye on the left at 11 and a half feet. Roots at the joint, 3 o'clock. Offset joint at 23. It's holding water, that's a belly, 31 to 38 feet. PVC now. City main at 52.";

/** Words of the lists that everybody says all day: a bonus for them would only harm what else is said. */
export const everydayWords = new Set(
  'a an the in on at to of or and is it no not i we he side end start line out up down left right top bottom point here there turn tie one two half white black green plastic water full new old city off over past can see way back hit run main house street road yard room open close closed good bad big small little short long high low'.split(
    ' ',
  ),
);
