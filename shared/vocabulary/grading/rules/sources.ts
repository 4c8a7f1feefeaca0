/** Where the limits come from, as the report prints it. A rule without a published limit says so. */
export const sources = {
  seattle: 'Seattle Public Utilities, side sewer defects and issues (read)',
  tacoma: 'City of Tacoma, side sewer condition assessment and repair recommendations (read)',
  seattleAndTacoma:
    'Seattle Public Utilities, side sewer defects and issues, and City of Tacoma, side sewer condition assessment (read)',
  /** Sections 1 and 2 were read at the publisher, section 3.1 in a member's full reproduction. */
  sewerScope: 'InterNACHI standards of practice for sewer scopes, 3.1.3 (read second hand)',
  sewerScopeMaterials: 'InterNACHI standards of practice for sewer scopes, 3.1.4 (read second hand)',
  actAtOnce: 'German federal guidelines for sewers (BFR Abwasser), A-3.1.6: act at once (read)',
  newWork: 'Carmel Area Wastewater District, acceptance of new 6 to 10 inch sewers (read)',
  deflectionFive: 'Ten States Standards, deflection of new sewers (from memory)',
  deflectionSevenHalf: 'Uni-Bell UNI-TR-1 as cited by a pipe maker (read second hand)',
  deflectionThirty: 'reverse curvature near 30 percent, restated from Uni-Bell (read second hand)',
  customary: 'common practice, no source',
} as const;
