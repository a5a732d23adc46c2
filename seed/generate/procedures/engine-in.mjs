// An engine goes on: accepted, lifted, torqued, rejoined, set up, run, closed. Every figure and document is invented.
import { count, held, photo, seen, step, text, torque } from './parts.mjs';

const MANUAL = { document: 'V-840 maintenance manual, 71-00-03', revision: '14' };
const RUN = { document: 'V-840 maintenance manual, 71-00-05', revision: '9' };
const row = (key, label, unit, low, high) => ({ key, label, unit, low, high });

export const accept = {
  key: 'accept',
  title: 'Accept the incoming engine',
  lane: 'in',
  place: 'stand',
  source: MANUAL,
  waitsFor: ['make-safe'],
  steps: [
    step('compare-papers', 'Compare the data plate with the release document.', {
      ...held,
      cautions: ['When plate and papers differ, the engine goes to quarantine. Do not fit it.'],
      captures: [
        { kind: 'papers', key: 'incoming-papers', label: 'Plate and release document' },
        photo('plate-photo', 'Picture of the data plate'),
      ],
    }),
    step('compare-standard', 'Compare its build standard with the strut and the position.', {
      text: 'Bulletins in and out, interfaces of fuel and hydraulic lines, model and rating.',
      cautions: ['A similar model is not the same model: lines that nearly fit can crack.'],
      captures: [text('standard-found', 'Differences found')],
    }),
    step('look-over-incoming', 'Inspect for damage; count the blanks it came with.', {
      captures: [count('incoming-blanks', 'Blanks on the incoming engine', 'blanks', 'out')],
    }),
  ],
};

export const lift = {
  key: 'lift',
  title: 'Lift and mount',
  lane: 'in',
  place: 'forward-mount',
  source: MANUAL,
  waitsFor: ['accept', 'inspect'],
  steps: [
    step('lift-engine', 'Lift the engine level to the strut and align the mounts.', {
      ...held,
      cautions: ['Suspended load: no one beneath. Watch the clearance all round.'],
      captures: [{ kind: 'component-on', key: 'engine-on', label: 'Engine that goes on' }],
      moves: 'installation',
    }),
    step('torque-forward-mount', 'Torque the forward mount bolts in order.', {
      ...held,
      text: 'New bolts and nuts. Pull smoothly; watch the run-on torque of each nut.',
      captures: [
        torque('forward-bolts', 'Forward mount bolt', {
          points: ['1', '3', '2', '4'],
          low: '105.0',
          high: '115.0',
          runOn: 'add',
        }),
      ],
      closes: ['forward-mount'],
    }),
    step('torque-aft-mount', 'Torque the aft mount bolts in order.', {
      ...held,
      captures: [
        torque('aft-bolts', 'Aft mount bolt', { points: ['1', '2'], low: '88', high: '96', runOn: 'add' }),
      ],
      closes: ['aft-mount'],
    }),
  ],
};

export const rejoinFluids = {
  key: 'rejoin-fluids',
  title: 'Rejoin fluids and air, right side',
  lane: 'in',
  place: 'core-right',
  source: MANUAL,
  waitsFor: ['lift'],
  steps: [
    step('rejoin-control', 'Rejoin the thrust control and check its travel.', {
      ...held,
      closes: ['thrust-control'],
    }),
    step('rejoin-air', 'Rejoin the bleed, starter and anti-ice ducts with new seals.', {
      captures: [count('duct-blanks-in', 'Blanks taken off ducts', 'blanks', 'in')],
      closes: ['bleed-duct', 'starter-duct', 'anti-ice-duct'],
    }),
    step('rejoin-hydraulics', 'Rejoin the hydraulic and drain lines with new seals.', {
      captures: [count('hydraulic-blanks-in', 'Blanks taken off hydraulic and drain lines', 'blanks', 'in')],
      closes: ['hydraulic-lines', 'drain-lines'],
    }),
    step('rejoin-fuel', 'Rejoin the fuel supply line with a new seal; torque the nut.', {
      ...held,
      cautions: ['Start the nut by hand. A nut that is lockwired can still be cross-threaded.'],
      captures: [
        count('fuel-blanks-in', 'Blanks taken off the fuel line', 'blanks', 'in'),
        torque('fuel-nut', 'Fuel supply nut', {
          points: ['1'],
          low: '450',
          high: '500',
          unit: 'lbf·in',
          thread: 'dry',
        }),
      ],
      closes: ['fuel-supply'],
    }),
  ],
};

export const rejoinElectrical = {
  key: 'rejoin-electrical',
  title: 'Rejoin electrical, left side',
  lane: 'in',
  place: 'core-left',
  source: MANUAL,
  waitsFor: ['lift'],
  steps: [
    step('rejoin-fire-loop', 'Rejoin the fire detector plugs; prove which position answers.', {
      ...held,
      cautions: ['Crossed plugs have gone unseen for years: the test must show this very position.'],
      closes: ['fire-loop'],
    }),
    step('rejoin-feeders', 'Rejoin the generator feeders in their order of phases.', {
      captures: [count('feeder-blanks-in', 'Blanks taken off feeders', 'blanks', 'in')],
      closes: ['generator-feeder'],
    }),
    step('rejoin-harness', 'Rejoin the electrical plugs by their labels.', {
      captures: [count('plug-blanks-in', 'Blanks taken off plugs', 'blanks', 'in')],
      closes: ['harness-upper', 'harness-lower'],
    }),
  ],
};

export const setUp = {
  key: 'set-up',
  title: 'Set up',
  lane: 'in',
  place: 'gearbox',
  source: MANUAL,
  waitsFor: ['rejoin-fluids', 'rejoin-electrical'],
  steps: [
    step('set-software', 'Check the control software and the rating plug.', {
      ...held,
      captures: [
        text('software-number', 'Software part number'),
        text('rating-plug', 'Rating plug part number'),
      ],
    }),
    step('service-oil', 'Fill and bleed the oil system; flush the preservative.', {
      cautions: ['Synthetic oil harms the skin: gloves and eye protection.'],
      captures: [count('incoming-blanks-in', 'Blanks taken off the incoming engine', 'blanks', 'in')],
    }),
    step('open-fuel', 'Open the fuel shut-off valve; make the bottle cartridges live.', {
      closes: ['fuel-valve'],
    }),
  ],
};

export const run = {
  key: 'run',
  title: 'Run and check for leaks',
  lane: 'in',
  place: 'exhaust',
  source: RUN,
  waitsFor: ['set-up'],
  steps: [
    step('motor', 'Motor it dry, then wet; look for leaks.', {
      cautions: [
        'Inlet suction and exhaust wake kill. Keep the distances of the manual; ground crew on the headset.',
      ],
      captures: [
        { kind: 'leak-check', key: 'motoring-check', label: 'Motoring', minMinutes: 2, power: 'motoring' },
      ],
    }),
    step('idle-leak-check', 'Run at idle and look for leaks.', {
      ...held,
      cautions: ['A motoring check does not stand for a check at power.', 'Hearing protection.'],
      captures: [
        { kind: 'leak-check', key: 'idle-check', label: 'Leak check at idle', minMinutes: 5, power: 'idle' },
      ],
    }),
    step('power-run', 'Run at power and take the readings.', {
      captures: [
        {
          kind: 'readings',
          key: 'power-readings',
          label: 'Power run',
          rows: [
            row('n1', 'N1', '%', '88.0', '92.5'),
            row('n2', 'N2', '%', null, '99.8'),
            row('egt', 'Exhaust gas temperature', '°C', null, '865'),
            row('oil-pressure', 'Oil pressure', 'psi', '42', '88'),
            row('vibration', 'Vibration', 'units', null, '2.5'),
            row('outside-air', 'Outside air temperature', '°C', null, null),
          ],
        },
      ],
    }),
    step('look-after-run', 'Look for leaks after the run; check the chip detectors.', {
      cautions: ['Hot parts: wait as long as the manual says.'],
      captures: [text('after-run-found', 'What was found')],
    }),
  ],
};

export const close = {
  key: 'close',
  title: 'Count and close',
  lane: 'in',
  place: 'fan-cowls',
  source: MANUAL,
  waitsFor: ['run'],
  steps: [
    step('count-tools', 'Count the tools back.', {
      captures: [count('tools-in', 'Tools returned', 'tools', 'in')],
    }),
    step('close-reverser', 'Close and latch both reverser halves; take out the lock-out pin.', {
      cautions: ['No one between half and core while they move.'],
      closes: ['reverser-left', 'reverser-right', 'reverser-lock'],
    }),
    step('close-fan-cowls', 'Close and latch both fan cowls.', {
      ...held,
      text: 'Lie down and see every latch flush. The second person looks again.',
      cautions: ['Cowls that looked closed have been lost on take-off.'],
      captures: [
        seen('latches-flush', 'Every latch seen flush'),
        photo('latch-photo', 'Picture of the latches'),
      ],
      closes: ['fan-cowl-left', 'fan-cowl-right'],
    }),
    step('restore-breakers', 'Take off the tags and push in the breakers.', {
      captures: [count('tags-in', 'Tags taken off', 'tags', 'in')],
    }),
  ],
};
