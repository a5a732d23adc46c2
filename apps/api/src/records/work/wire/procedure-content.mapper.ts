import type { Capture } from '@strutbook/domain/work/capture.js';
import type { ProcedureContent, StepDefinition } from '@strutbook/domain/work/step.js';
import type { AnyCaptureDto } from './each-capture.js';
import type { ProcedureContentDto, StepDefinitionDto } from './procedure-content.dto.js';

/** A content that was sent, with null where something was left out. Total. */
export function toContent({ groups, items, steps }: ProcedureContentDto): ProcedureContent {
  return {
    groups: groups.map(({ key, letter, title, lane, place }) => ({ key, letter, title, lane, place })),
    items: items.map(({ key, kind, name, side }) => ({ key, kind, name, side: side ?? null })),
    steps: steps.map(toDefinition),
  };
}

function toDefinition(step: StepDefinitionDto): StepDefinition {
  return {
    key: step.key,
    number: step.number,
    group: step.group,
    title: step.title,
    text: step.text ?? null,
    cautions: step.cautions,
    source: step.source ?? null,
    waitsFor: step.waitsFor,
    inspection: step.inspection,
    captures: step.captures.map(toCapture),
    opens: step.opens,
    closes: step.closes,
    moves: step.moves ?? null,
  };
}

/** A capture that was sent, with null where something was left out. Total. */
export function toCapture(capture: AnyCaptureDto): Capture {
  switch (capture.kind) {
    case 'torque': {
      const { rule, low, high } = capture.runOn;
      return { ...capture, runOn: { rule, low: low ?? null, high: high ?? null } };
    }
    case 'readings':
      return {
        ...capture,
        rows: capture.rows.map((row) => ({ ...row, low: row.low ?? null, high: row.high ?? null })),
      };
    default:
      return { ...capture };
  }
}
