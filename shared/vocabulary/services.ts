/** What a drain or fitting serves: the name in the draft, how the report prints it, and how it is said. */
export interface Service {
  readonly name: string;
  readonly title: string;
  readonly words: readonly string[];
}

export const services = [
  {
    name: 'laundry',
    title: 'laundry',
    words: [
      'laundry',
      'washer',
      'washing machine',
      'laundry room',
      'clothes washer',
      'laundry tub',
      'laundry sink',
      'laundry tray',
      'wash tub',
      'utility room',
    ],
  },
  {
    name: 'kitchen',
    title: 'kitchen',
    words: ['kitchen', 'kitchen sink', 'dishwasher', 'dish sink', 'disposal', 'kitchenette'],
  },
  {
    name: 'bath',
    title: 'bathroom',
    words: [
      'bath',
      'bathroom',
      'hall bath',
      'powder room',
      'half bath',
      'master bath',
      'primary bath',
      'guest bath',
      'ensuite',
      'bathrooms',
      'restroom',
      'washroom',
      'bath group',
      'bathroom group',
      'cloakroom',
      'hall bathroom',
      'master bathroom',
    ],
  },
  { name: 'tub', title: 'tub', words: ['tub', 'bathtub', 'bath tub'] },
  { name: 'toilet', title: 'toilet', words: ['toilet', 'commode', 'water closet', 'john'] },
  { name: 'shower', title: 'shower', words: ['shower', 'shower pan', 'shower drain', 'shower stall'] },
  {
    name: 'sink',
    title: 'sink',
    words: [
      'sink',
      'lavatory',
      'lav',
      'vanity',
      'wash basin',
      'utility sink',
      'slop sink',
      'bar sink',
      'wash hand basin',
      'hand basin',
      'mop sink',
    ],
  },
  { name: 'water-heater', title: 'water heater', words: ['water heater', 'hot water heater'] },
  { name: 'floor-drain', title: 'floor drain', words: ['floor drain'] },
  {
    name: 'yard',
    title: 'yard drain',
    words: ['yard', 'yard drain', 'area drain', 'catch basin', 'patio drain', 'driveway drain', 'garden drain'],
  },
  {
    name: 'downspout',
    title: 'downspout',
    words: [
      'downspout',
      'down spout',
      'downspouts',
      'downpipe',
      'downpipes',
      'rainwater pipe',
      'rone',
      'rone pipe',
      'gutter',
      'gutters',
      'roof drain',
      'rain leader',
      'leader',
    ],
  },
] as const satisfies readonly Service[];

export type ServiceName = (typeof services)[number]['name'];
export const serviceNames = services.map((s) => s.name) as [ServiceName, ...ServiceName[]];
