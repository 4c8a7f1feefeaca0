/** What a drain or fitting serves. */
import type { ServiceName } from '../../../shared/vocabulary/services.ts';
import type { FamilyExamples } from '../example.ts';

export const examples = {
  says: [
    { value: 'laundry', ways: ['the laundry ties in', 'from the washer', 'washing machine drain'] },
    { value: 'kitchen', ways: ['kitchen line', "that's the kitchen sink", 'for the dishwasher'] },
    { value: 'bath', ways: ['hall bath', 'the bathroom', 'from the powder room'] },
    { value: 'tub', ways: ['the tub', 'bath tub drain'] },
    { value: 'toilet', ways: ['that is the toilet', 'the commode'] },
    { value: 'shower', ways: ['shower drain', 'that is the shower'] },
    { value: 'sink', ways: ['bar sink', 'the lav', 'the vanity'] },
    { value: 'water-heater', ways: ['hot water heater', 'water heater'] },
    { value: 'floor-drain', ways: ['the floor drain', 'garage floor drain'] },
    { value: 'yard', ways: ['yard drain', 'the patio drain'] },
    { value: 'downspout', ways: ['the down spout', 'roof drain', 'gutters'] },
  ],
  never: ['roots at the joint', 'two feet of water'],
  notYet: [{ value: null, ways: ['let that sink in', 'a rain shower', 'the team leader'] }],
} satisfies FamilyExamples<ServiceName>;
