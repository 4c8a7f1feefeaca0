/** What the recogniser is told about the talk before it listens. Names of things come from `kinds/`, materials and services. */

/** Words of the lists that everybody says all day: a bonus for them would only harm what else is said. */
export const everydayWords = new Set(
  'a an the in on at to of or and is it no not i we he side end start line out up down left right top bottom point here there turn tie one two half white black green plastic water full new old city off over past can see way back hit run main house street road yard room open close closed good bad big small little short long high low'.split(
    ' ',
  ),
);
