/** The moment the made-up fleets end at: all of them have flown until the evening before. */
export const NOW = new Date(Date.UTC(2022, 10, 8));

/**
 * The scales: an operator's airframes, and as SQL of the airframe `a` how many engines it has and how many flights; limited
 * parts in each engine, and below how many cycles each came, so that a few are over their limit of 60,000; minutes from one
 * take-off to the next. The large one's 40 million flights are not all made: ten airframes have their twenty years, the
 * others the last two.
 */
export const SCALES = {
  S: { name: 'S', airframes: 10, engines: '4', parts: 230, flights: '10000', came: 50100, every: 526 },
  L: {
    name: 'L',
    airframes: 1000,
    engines: '2 + a % 2',
    parts: 230,
    came: 20100,
    flights: 'CASE WHEN a <= 10 THEN 40000 ELSE 4000 END',
    every: 263,
  },
};

/** For the gates over history: three airframes alike, each with ten times the flights of the one before. */
export const histories = (least) => ({
  name: 'history',
  airframes: 3,
  engines: '2',
  parts: 50,
  came: 20000,
  flights: `${least} * (10 ^ (a - 1))::int`,
  every: 263,
});

/** For the gates over a fleet: so many airframes alike. */
export const fleetOf = (airframes) => ({
  name: `${airframes}`,
  airframes,
  engines: '2',
  parts: 20,
  came: 20000,
  flights: '100',
  every: 263,
});
