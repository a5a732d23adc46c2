// The procedures of the demonstration. Documents, figures and makers are invented.

import * as on from './engine-in.mjs';
import * as off from './engine-out.mjs';
import { content, count, held, item, photo, seen, step, text, torque } from './parts.mjs';
import { podSwap } from './pod-swap.mjs';
import { borescope, clampDirective, unitChange } from './short.mjs';

const engineChange = {
  code: 'V840-71-EC',
  revision: '3',
  title: 'Engine change, V-840, any position',
  kind: 'engine-change',
  document: 'V-840 maintenance manual, chapter 71',
  documentRevision: '14',
  airframeType: 'V-840',
  content: content({
    items: off.items,
    groups: [
      off.makeSafe,
      off.open,
      off.part,
      off.partFluids,
      off.lower,
      off.inspect,
      on.accept,
      on.lift,
      on.rejoinFluids,
      on.rejoinElectrical,
      on.setUp,
      on.run,
      on.close,
    ],
  }),
};

const REPEAT_CHECK = { document: 'V-840 maintenance manual, 71-20-01', revision: '6' };
const repeatTorque = {
  code: 'V840-71-RT',
  revision: '1',
  title: 'Mount bolts, repeat check after an engine change',
  kind: 'inspection',
  document: 'V-840 maintenance manual, chapter 71',
  documentRevision: '14',
  airframeType: 'V-840',
  content: content({
    items: [
      item('fan-cowl-left', 'cowl', 'Fan cowl', 'left'),
      item('fan-cowl-right', 'cowl', 'Fan cowl', 'right'),
    ],
    groups: [
      {
        key: 'open',
        title: 'Open',
        lane: 'both',
        place: 'fan-cowls',
        source: REPEAT_CHECK,
        steps: [
          step('tag-breakers', 'Pull and tag the breakers of the position.', {
            captures: [count('tags-out', 'Tags hung', 'tags', 'out')],
          }),
          step('open-cowls', 'Open both fan cowls; lock the hold-open rods.', {
            cautions: ['Wind can tear open cowls loose: read the wind and the limit of the manual first.'],
            opens: ['fan-cowl-left', 'fan-cowl-right'],
          }),
        ],
      },
      {
        key: 'check',
        title: 'Check',
        lane: 'both',
        place: 'forward-mount',
        source: REPEAT_CHECK,
        waitsFor: ['open'],
        steps: [
          step('check-forward-bolts', 'Back off, mark and torque the forward mount bolts again, in order.', {
            ...held,
            captures: [
              torque('forward-bolts', 'Forward mount bolt', {
                points: ['1', '3', '2', '4'],
                low: '105.0',
                high: '115.0',
              }),
            ],
          }),
          step('look-for-leaks', 'Look for leaks at fuel, oil and hydraulic lines.', {
            captures: [text('found', 'What was found'), photo('picture', 'Picture')],
          }),
        ],
      },
      {
        key: 'close',
        title: 'Close',
        lane: 'both',
        place: 'fan-cowls',
        source: REPEAT_CHECK,
        waitsFor: ['check'],
        steps: [
          step('close-cowls', 'Close and latch both fan cowls.', {
            ...held,
            cautions: ['Cowls that looked closed have been lost on take-off.'],
            captures: [seen('latches-flush', 'Every latch seen flush')],
            closes: ['fan-cowl-left', 'fan-cowl-right'],
          }),
          step('remove-tags', 'Take off the tags and push in the breakers.', {
            captures: [count('tags-in', 'Tags taken off', 'tags', 'in')],
          }),
        ],
      },
    ],
  }),
};

/** Every procedure, as POST /api/procedures takes it. */
export const procedures = [engineChange, repeatTorque, podSwap, borescope, clampDirective, unitChange];
