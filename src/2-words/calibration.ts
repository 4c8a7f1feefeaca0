/**
 * The fitted curve from the recogniser's own word probability to one that means what it says.
 * Written by `npm run calibrate` (src/bench/calibrate-hearing.ts); do not edit by hand.
 */
export const calibration = {
  slope: 1,
  offset: 0,
  fittedOn: 'not fitted yet',
} as const;
