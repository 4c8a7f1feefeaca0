import type { Kind } from '../kind.ts';

export const materialChange = {
  name: 'material-change',
  group: 'fitting',
  title: 'Material change',
  plural: 'material changes',
  takes: ['fromMaterial', 'toMaterial'],
  words: ['material change', 'change of material', 'change in material'],
  signs: ['transition from', 'transition to', 'transitions to', 'transitions into', 'transition between', 'transition'],
  misheard: [{ heard: 'transmission from|to', said: 'transition', needs: 'nothing' }],
  examples: {
    says: [
      {
        text: "Thirty feet, we're in cast iron now.",
        gives: { at: 30, fromMaterial: 'clay', toMaterial: 'cast-iron' },
      },
      {
        text: "Twenty seven. It's transite from here out.",
        gives: { at: 27, fromMaterial: 'clay', toMaterial: 'asbestos-cement' },
      },
      {
        text: 'It changes at eighteen to ABS. Sorry, PVC.',
        gives: { at: 18, fromMaterial: 'clay', toMaterial: 'pvc' },
      },
      {
        text: "Looks good, it's been plastic since forty.",
        gives: { at: 40, fromMaterial: 'clay', toMaterial: 'pvc' },
      },
      {
        text: "At thirty, clay to PVC. No, that's ABS. Clay to ABS.",
        gives: { at: 30, fromMaterial: 'clay', toMaterial: 'abs' },
      },
      {
        text: 'At thirty four feet the clay changes over to PVC.',
        gives: { at: 34, fromMaterial: 'clay', toMaterial: 'pvc' },
      },
      {
        text: 'Transition from clay to cast iron at 18 feet.',
        gives: { at: 18, fromMaterial: 'clay', toMaterial: 'cast-iron' },
      },
      {
        text: 'Twenty seven and a half, it goes from clay to Orangeburg.',
        gives: { at: 27.5, fromMaterial: 'clay', toMaterial: 'bituminous-fiber' },
      },
      {
        text: 'At thirty eight feet we leave the clay and pick up plastic.',
        gives: { at: 38, fromMaterial: 'clay', toMaterial: 'pvc' },
      },
      {
        text: "Forty one. The clay's done. It's cast iron after that.",
        gives: { at: 41, fromMaterial: 'clay', toMaterial: 'cast-iron' },
      },
      {
        text: 'Past the footing at twelve feet we get into cast iron.',
        gives: { at: 12, fromMaterial: 'clay', toMaterial: 'cast-iron' },
      },
      {
        text: "There's our material change, clay to ABS, right at sixty.",
        gives: { at: 60, fromMaterial: 'clay', toMaterial: 'abs' },
      },
    ],
    never: [
      'Mom just had new tile put in at ten.',
      "That's the end of one tile and the next tile at six.",
      'Plastic rooster at twenty seven.',
      "At thirty there's a plastic feed sack wadded up.",
      "No change of material, it's clay all the way.",
      'At 44 feet the clay lasts better than cast iron would.',
      'Next door they went from clay to PVC at twenty feet.',
      "That's the end of a copper line somebody dropped by the meter.",
      "I'd plan on a change to plastic when they redo the driveway.",
      'The transition to the new permit system has been a mess.',
    ],
    notYet: [
      {
        text: 'Transmission from clay to PVC at 22 feet.',
        gives: { at: 22, fromMaterial: 'clay', toMaterial: 'pvc' },
        flag: 'word-unsure',
      },
      { text: 'Most of these go from clay to plastic out by the street.', gives: [] },
    ],
  },
  report: {
    meaning:
      'One pipe material ends and another begins; the joint between them is a usual place for a lip, a gap or roots.',
    next: 'Nothing to do beyond what is noted at the joint.',
    glossary: 'Material change: the place where one kind of pipe joins another.',
  },
} as const satisfies Kind;
