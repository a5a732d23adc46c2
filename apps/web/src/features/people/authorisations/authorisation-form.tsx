import { useQuery } from '@tanstack/react-query';
import { parseDate } from '../../../format/utc-moment.js';
import { useAct } from '../../../server/act.js';
import { roleWords } from '../../../server/authority.js';
import { airframeTypesQuery } from '../../../server/fleet.js';
import { Button } from '../../../ui/actions/button.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { Notice } from '../../../ui/messages/notice.js';
import { type Person, peopleQuery } from '../people-data.js';
import {
  AUTHORISATIONS_KEY,
  type Authorisation,
  addAuthorisation,
  type NewAuthorisation,
  type Scope,
} from './authorisation-data.js';
import { SCOPES, signsWith } from './authorisation-words.js';

interface Typed {
  readonly personId: string;
  readonly scope: Scope;
  readonly airframeTypeId: string;
  readonly fromOn: string;
  readonly toOn: string;
  readonly reference: string;
}

const START: Typed = { personId: '', scope: 'work', airframeTypeId: '', fromOn: '', toOn: '', reference: '' };

function check({ personId, fromOn, toOn, reference }: Typed): Faults {
  const from = parseDate(fromOn);
  const to = toOn.trim() === '' ? null : parseDate(toOn);
  return {
    ...(personId === '' ? { personId: 'Choose the person' } : {}),
    ...(from.ok ? {} : { fromOn: from.reason }),
    ...(to === null || to.ok ? {} : { toOn: to.reason }),
    ...(reference.trim() === '' ? { reference: 'Enter the letter or list it rests on' } : {}),
  };
}

const wordsOf = ({ personId, scope, airframeTypeId, fromOn, toOn, reference }: Typed): NewAuthorisation => ({
  ...{ personId, scope, fromOn: fromOn.trim(), reference: reference.trim() },
  ...(airframeTypeId === '' ? {} : { airframeTypeId }),
  ...(toOn.trim() === '' ? {} : { toOn: toOn.trim() }),
});

/** An authorisation without the role signs nothing: said before it is recorded. */
function RoleNote({ person, scope }: { readonly person: Person | undefined; readonly scope: Scope }) {
  if (person === undefined) return null;
  const lacksLicence = scope === 'release' && person.licence === null;
  if (signsWith(scope, person.roles) && !lacksLicence) return null;
  const roles = SCOPES.find(({ value }) => value === scope)?.roles ?? [];
  return (
    <Notice kind="note">
      {lacksLicence && signsWith(scope, person.roles)
        ? `${person.fullName} has no licence number on record. Without one no release can be signed.`
        : `${person.fullName} is ${roleWords(person.roles)}. This is signed by: ${roleWords(roles)}. Until the role is held, the authorisation alone lets nothing be signed.`}
    </Notice>
  );
}

/** What a person may sign from a day on. */
export function AuthorisationForm({ onAdded }: { readonly onAdded: (made: Authorisation) => void }) {
  const people = (useQuery(peopleQuery).data ?? []).filter(({ disabledAt }) => disabledAt === null);
  const types = useQuery(airframeTypesQuery).data ?? [];
  const act = useAct({ perform: addAuthorisation, onDone: onAdded, refresh: [AUTHORISATIONS_KEY] });
  const form = useActForm({ start: START, check, words: wordsOf, act });
  const { typed, change, field } = form;
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      <SelectField
        {...field('personId')}
        label="Person"
        unchosen="Choose a person"
        options={people.map(({ id, fullName, roles }) => ({
          value: id,
          label: `${fullName} (${roleWords(roles)})`,
        }))}
        value={typed.personId}
        onChange={({ target }) => change({ personId: target.value })}
      />
      <SelectField
        {...field('scope')}
        label="May sign"
        options={SCOPES}
        value={typed.scope}
        onChange={({ target }) =>
          change({ scope: SCOPES.find(({ value }) => value === target.value)?.value ?? 'work' })
        }
      />
      <RoleNote person={people.find(({ id }) => id === typed.personId)} scope={typed.scope} />
      <SelectField
        {...field('airframeTypeId')}
        label="On"
        hint="Work on a component that hangs on no airframe needs an authorisation for all types"
        unchosen="All types"
        options={types.map(({ id, maker, designation }) => ({ value: id, label: `${maker} ${designation}` }))}
        value={typed.airframeTypeId}
        onChange={({ target }) => change({ airframeTypeId: target.value })}
      />
      <TextField
        {...field('fromOn')}
        label="First day"
        hint="Year-month-day"
        mono
        value={typed.fromOn}
        onChange={({ target }) => change({ fromOn: target.value })}
      />
      <TextField
        {...field('toOn')}
        label="Last day"
        hint="Year-month-day; good through this day"
        optional
        mono
        value={typed.toOn}
        onChange={({ target }) => change({ toOn: target.value })}
      />
      <TextField
        {...field('reference')}
        label="Rests on"
        hint="The letter, the list or the course"
        value={typed.reference}
        onChange={({ target }) => change({ reference: target.value })}
      />
      <div>
        <Button type="submit" kind="primary" busy={form.busy}>
          Add the authorisation
        </Button>
      </div>
    </form>
  );
}
