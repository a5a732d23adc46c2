import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { momentText } from '../../../format/when.js';
import { Button } from '../../../ui/actions/button.js';
import { ObjectionList, type ShownObjection } from '../../../ui/messages/objection-list.js';

/** Refusals that are about the record, not about what was typed. */
const TITLES: Readonly<Record<string, string>> = {
  ALREADY_SIGNED: 'Signed by somebody else first',
  CHECK_CHANGED: 'The step changed while you read',
  NOT_AUTHORISED: 'Not authorised for this',
  NOT_AUTHORISED_TODAY: 'Not authorised for this today',
  SAME_PERSON: 'A different inspector must sign',
  STEP_BLOCKED: 'Another step comes first',
  CAPTURES_MISSING: 'Something is not captured yet',
  INSTALLATION_REFUSED: 'This must not be fitted',
  NOT_ALLOWED: 'This person may not sign it',
  INSTALLED_BEFORE_REMOVED: 'What is there must come off first',
  MOVE_RECORDED: 'The move is on record already',
  WRONG_STATE: 'This package is no longer open',
};

/** Whether it is shown in place of the form. */
export const isConflict = (error: unknown): error is ProblemError =>
  error instanceof ProblemError && TITLES[error.code] !== undefined;

function text(body: unknown, key: string): string | null {
  if (typeof body !== 'object' || body === null || !(key in body)) return null;
  const value = (body as Readonly<Record<string, unknown>>)[key];
  return typeof value === 'string' ? value : null;
}

const isObjection = (value: unknown): value is ShownObjection =>
  typeof value === 'object' && value !== null && 'code' in value && 'subject' in value && 'fix' in value;

/** What is held against fitting it, where that is the refusal. */
function objectionsOf(body: unknown): readonly ShownObjection[] {
  if (typeof body !== 'object' || body === null || !('objections' in body)) return [];
  return Array.isArray(body.objections) ? body.objections.filter(isObjection) : [];
}

interface SignConflictProps {
  readonly error: ProblemError;
  /** Reads the words anew and goes on; left out where that leads nowhere. */
  readonly onAgain: () => void;
  readonly onClose: () => void;
}

const AGAIN: ReadonlySet<string> = new Set([
  'CHECK_CHANGED',
  'NOT_AUTHORISED',
  'NOT_AUTHORISED_TODAY',
  'SAME_PERSON',
  'NOT_ALLOWED',
]);

/** The record moved on, or this person may not: what is on record now, that nothing was signed, what to do. */
export function SignConflict({ error, onAgain, onClose }: SignConflictProps) {
  const { code, message, body, fields } = error;
  const [by, at] = [text(body, 'by'), text(body, 'at')];
  return (
    <section className="conflict stack" role="alert">
      <h3>{TITLES[code]}</h3>
      <p>{message}</p>
      {fields.length > 0 && (
        <ul className="panel-fixes">
          {fields.map(({ reason, fix }) => (
            <li key={`${reason} ${fix}`}>
              {reason} {fix}
            </li>
          ))}
        </ul>
      )}
      {code === 'ALREADY_SIGNED' && (
        <div className="conflict-sides">
          <div className="conflict-side">
            <h4>Yours</h4>
            <p>Not recorded</p>
          </div>
          <div className="conflict-side">
            <h4>On record now</h4>
            <p>
              {by ?? 'Another person'}
              {at !== null && `, ${momentText(at)}`}
            </p>
          </div>
        </div>
      )}
      {objectionsOf(body).length > 0 && <ObjectionList objections={objectionsOf(body)} airframeId={null} />}
      <p>
        <strong>Nothing was signed.</strong>
      </p>
      <div className="row">
        {AGAIN.has(code) && (
          <Button onClick={onAgain}>
            {code === 'CHECK_CHANGED' ? 'Read it again' : 'Another person signs'}
          </Button>
        )}
        <Button onClick={onClose}>Back to the step</Button>
      </div>
    </section>
  );
}
