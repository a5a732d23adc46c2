import type { StepDefinition, StepGroup } from '@strutbook/domain/work/step.js';
import type { OwnStepDto } from './wire/own-step.dto.js';
import { toCapture } from './wire/procedure-content.mapper.js';

/** The group of the steps that no procedure has; its sign keeps it apart from the keys of every procedure. */
export const ADDED = '+added';

/** The group of added steps, lettered after those of the procedure. Total for up to 25 groups. */
export function addedGroup(groups: readonly StepGroup[]): StepGroup {
  const letter = String.fromCharCode(Math.min(65 + groups.length, 90));
  return { key: ADDED, letter, title: 'Added steps', lane: 'both', place: 'ground' };
}

/** Own steps as definitions, numbered on after what is there. Total. */
export function ownDefinitions(
  own: readonly OwnStepDto[],
  after: { readonly number: number; readonly own: number },
): StepDefinition[] {
  return own.map((step, index) => ({
    key: `+${after.own + index + 1}`,
    number: after.number + index + 1,
    group: ADDED,
    title: step.title,
    text: step.text ?? null,
    cautions: [],
    source: null,
    waitsFor: [],
    inspection: step.inspection,
    captures: (step.captures ?? []).map(toCapture),
    opens: [],
    closes: [],
    moves: step.moves ?? null,
  }));
}

/** The steps that make an order without a procedure: what comes off, then what goes on, looked at by another. Total. */
export function stepsOfOrder(order: {
  readonly outgoing: { readonly serialNumber: string } | null;
  readonly incoming: { readonly serialNumber: string } | null;
}): OwnStepDto[] {
  const { outgoing, incoming } = order;
  const off: OwnStepDto[] =
    outgoing === null
      ? []
      : [
          {
            title: `Remove serial ${outgoing.serialNumber}.`,
            inspection: 'none',
            captures: [{ kind: 'component-off', key: 'off', label: 'Serial number off, from the plate' }],
            moves: 'removal',
          },
        ];
  const on: OwnStepDto[] =
    incoming === null
      ? []
      : [
          {
            title: `Install serial ${incoming.serialNumber}.`,
            inspection: 'independent',
            captures: [
              { kind: 'papers', key: 'papers', label: 'Release document against the plate' },
              { kind: 'component-on', key: 'on', label: 'Serial number on, from the plate' },
            ],
            moves: 'installation',
          },
        ];
  return [...off, ...on];
}
