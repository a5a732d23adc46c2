/** How much of each is on record. */
export interface Entered {
  readonly airframeTypes: number;
  readonly engineModels: number;
  readonly airframes: number;
  readonly lifeLimits: number;
  readonly locations: number;
  readonly components: number;
  readonly moreComponents: boolean;
}

export interface Step {
  readonly title: string;
  readonly why: string;
  readonly href: string;
  /** The word of the way there. */
  readonly word: string;
  readonly count: { readonly amount: number; readonly noun: string; readonly more?: boolean } | null;
  /** What must be entered before; null when nothing is missing. */
  readonly waitsFor: string | null;
}

/** What to enter, in order, and what each step waits for. Total. */
export function registerSteps(entered: Entered): readonly Step[] {
  const { airframeTypes, engineModels, airframes, lifeLimits, locations, components } = entered;
  return [
    {
      title: 'Airframe types',
      why: 'A type says which positions its airframes have.',
      href: '/register/airframe-types',
      word: 'Airframe types',
      count: { amount: airframeTypes, noun: 'type' },
      waitsFor: null,
    },
    {
      title: 'Engine models',
      why: 'A model has its ratings, and the rule that makes cycles of flights.',
      href: '/register/engine-models',
      word: 'Engine models',
      count: { amount: engineModels, noun: 'model' },
      waitsFor: airframeTypes === 0 ? 'airframe type' : null,
    },
    {
      title: 'Life limits',
      why: 'What a part number may run in a model, from a dated document.',
      href: '/register/life-limits',
      word: 'Life limits',
      count: { amount: lifeLimits, noun: 'limit' },
      waitsFor: engineModels === 0 ? 'engine model' : null,
    },
    {
      title: 'Airframes',
      why: 'Each with its registration; the positions come with the type.',
      href: '/register/airframes',
      word: 'Airframes',
      count: { amount: airframes, noun: 'airframe' },
      waitsFor: airframeTypes === 0 ? 'airframe type' : null,
    },
    {
      title: 'Locations',
      why: 'Where components are while they are not installed.',
      href: '/register/locations',
      word: 'Locations',
      count: { amount: locations, noun: 'location' },
      waitsFor: null,
    },
    {
      title: 'Components',
      why: 'Engines with the places in them, modules, parts, pods.',
      href: '/register/components',
      word: 'Components',
      count: { amount: components, noun: 'component', more: entered.moreComponents },
      waitsFor: engineModels === 0 ? 'engine model' : null,
    },
    {
      title: 'Opening balances',
      why: 'What each had used when its record began. It is entered on the page of the component or airframe.',
      href: '/register/components',
      word: 'Choose a component',
      count: null,
      waitsFor: components === 0 ? 'component' : null,
    },
    {
      title: 'Placements',
      why: 'Parts into modules, modules into engines, engines to positions: from the inside out.',
      href: airframes === 0 ? '/register/components' : '/register/airframes',
      word: airframes === 0 ? 'Choose a component' : 'Choose an airframe',
      count: null,
      waitsFor: components === 0 ? 'component' : airframes === 0 ? 'airframe' : null,
    },
  ];
}
