/**
 * What each of the close reader's features weighs: a logistic model of "this item is wrong in some field", fitted on 2664 findings
 * of 145 narrations that the close reader was not taught from. A positive weight speaks for doubt.
 */
export const closeBias = -1.44;

/** From this doubt on an item has to be looked at. */
export const CLOSE_THRESHOLD = 0.1;

export const closeWeights: Readonly<Record<string, number>> = {
  'rules:doubt': 0.292,
  'rules:flagged': 1.125,
  'rules:several': 0.78,
  'kind:odds': -0.152,
  'kind:unlikely': 0.15,
  'kind:sure': -0.322,
  'other:odds': -0.123,
  'other:likely': 0.277,
  'at:odds': -0.156,
  'at:unlikely': 0.096,
  'at:sure': -0.182,
  'field:odds': 0.001,
  'field:unlikely': -0.008,
  'field:all': -0.795,
  'any:least': -0.652,
};
