import type { OwnStep } from './package-acts.js';

/** A step of one's own, as typed. */
export interface TypedStep {
  readonly title: string;
  readonly text: string;
  readonly inspected: boolean;
}

export const EMPTY_STEP: TypedStep = { title: '', text: '', inspected: false };

export const NO_TITLE = 'Enter what is to be done, for example: Replace the fuel filter.';

/** The step as the server takes it. */
export const ownStep = ({ title, text, inspected }: TypedStep): OwnStep => ({
  title: title.trim(),
  ...(text.trim() === '' ? {} : { text: text.trim() }),
  inspection: inspected ? 'independent' : 'none',
});
