// Writes the demonstration's files again: node seed/generate/generate.mjs. The same files come out each time.
import { events, firstRatings, flightsByHand, isByHand } from './events.mjs';
import { expected } from './expected.mjs';
import { writeCsv, writeJson } from './files.mjs';
import { airframes, OPERATOR, OWNER, people } from './fleet.mjs';
import { inCsv } from './instants.mjs';
import { airframeTypes, apuModel, models } from './models.mjs';
import { procedures } from './procedures/procedures.mjs';
import { assessments, directives, directivesMet, variations } from './shop/directives.mjs';
import { accomplishments } from './shop/due.mjs';
import { lifeLimits, limitDirective } from './shop/limits.mjs';
import { requirements } from './shop/requirements.mjs';
import { authorisations, tools } from './shop/tools.mjs';
import { components, gapAcceptances, openings, placements, traceGaps } from './tables.mjs';
import { flights } from './timeline.mjs';
import { workFile } from './work/packages.mjs';

const locations = [
  ['Engine store, QXA', 'store'],
  ['Engine store, QZJ', 'store'],
  ['Engine store, QQJ', 'store'],
  ['Quarantine, QXA', 'quarantine'],
  ['Karneth shop, Tarnwick', 'shop'],
  ['Ruvane shop, Oldersund', 'shop'],
  ['Dorsmeer shop, Hexelby', 'shop'],
  ['Pod shop, QZJ', 'shop'],
  ['On loan', 'transferred-out'],
].map(([name, kind]) => ({ name, kind }));

const engineModels = [
  ...Object.entries(models).map(
    ([designation, { maker, lifeMethod, manual, ratings, airframeType, rule, ruleWords }]) => ({
      kind: 'engine',
      maker,
      designation,
      lifeMethod,
      lifeSource: `${manual}: ${lifeMethod === 'pro-rata' ? 'lives at several ratings are added in proportion' : 'all cycles count against the lowest limit'}`,
      ratings: ratings.map((code, index) => ({
        code,
        description: index === 0 ? 'Lower take-off thrust' : 'Higher take-off thrust',
      })),
      cycleRules: [{ airframeType, ...rule, source: `${manual}: ${ruleWords}`, revision: '6' }],
    }),
  ),
  {
    kind: 'apu',
    maker: apuModel.maker,
    designation: apuModel.designation,
    lifeMethod: 'pro-rata',
    lifeSource: apuModel.manual,
    ratings: apuModel.ratings.map((code) => ({ code, description: 'Single rating' })),
    cycleRules: [
      {
        perFlight: 0,
        perLanding: 0,
        perTouchAndGo: 0,
        perStart: 1,
        perAbortedTakeOff: 0,
        denominator: 1,
        source: `${apuModel.manual}: one cycle a start of the unit`,
        revision: '2',
      },
    ],
  },
];

const builds = Object.fromEntries(
  Object.entries(models).map(([model, { modules }]) => [
    model,
    Object.fromEntries(Object.entries(modules).map(([name, parts]) => [name, parts.map(([part]) => part)])),
  ]),
);

writeJson('people.json', people);
writeJson('operator.json', OPERATOR);
writeJson('expected.json', expected());
writeJson('register/airframe-types.json', airframeTypes);
writeJson(
  'register/airframes.json',
  airframes.map(({ registration, serialNumber, type, ruleSet, lessor, manufacturedOn }) => ({
    registration,
    serialNumber,
    airframeType: type,
    ruleSet,
    dayZone: 'UTC',
    owner: lessor ?? OWNER,
    ...(lessor ? { lessor } : {}),
    manufacturedOn,
  })),
);
writeJson('register/engine-models.json', engineModels);
writeJson('register/engine-builds.json', builds);
writeJson('register/locations.json', locations);
writeCsv('register/life-limits.csv', lifeLimits());
writeJson('register/limit-directive.json', limitDirective());
writeCsv('register/components.csv', components());
writeCsv('register/ratings.csv', firstRatings());
writeCsv('register/openings.csv', openings());
writeCsv('register/placements.csv', placements());
writeCsv('register/trace-gaps.csv', traceGaps());
writeJson('register/gap-acceptances.json', gapAcceptances());
writeJson('register/tools.json', tools);
writeJson('register/authorisations.json', authorisations(people));
writeJson('register/procedures.json', procedures);
writeJson('register/requirements.json', requirements);
writeJson('register/accomplishments.json', accomplishments());
writeJson('register/directives.json', {
  requirements: directives,
  assessments,
  accomplishments: directivesMet,
  variations,
});
writeJson('happened/events.json', events());
writeJson('happened/work.json', workFile());
writeJson('happened/flights-by-hand.json', flightsByHand());
for (const [registration, log] of Object.entries(flights)) {
  writeCsv(
    `flights/${registration}.csv`,
    log
      .filter((flight, index) => !isByHand(registration, flight, index))
      .map((flight) => ({
        registration,
        log_page: flight.page,
        from: flight.from,
        to: flight.to,
        take_off_utc: inCsv(flight.takeOffAt),
        landing_utc: inCsv(flight.landingAt),
        touch_and_goes: flight.touchAndGoes,
        starts: flight.starts,
        aborted_take_offs: flight.abortedTakeOffs,
      })),
  );
}
